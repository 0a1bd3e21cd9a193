using Dryfit.Casework.Building;
using Dryfit.Casework.Carcases;
using Dryfit.Parameters;

namespace Dryfit.Casework.Shelving.Racks;

/// <summary>Puts a rack in a bay.</summary>
internal static class RackMaker
{
    /// <param name="insideDepth">From the front of the inside to the back.</param>
    /// <param name="doors">How far doors in their opening reach in before it; null where they do not.</param>
    public static void Make(
        PieceBuilder piece,
        CarcasePlan plan,
        Cell bay,
        RackPlan rack,
        Figure insideDepth,
        Figure? doors
    )
    {
        var site = new RackSite(piece, plan, bay, rack, insideDepth, doors);
        switch (rack.Kind)
        {
            case RackKind.Bottles:
                BottleRack.Make(site);
                break;
            case RackKind.Stemware:
                StemRack.Make(site);
                break;
            case RackKind.Plates:
                PlateRack.Make(site);
                break;
            default:
                JarRack.Make(site);
                break;
        }
    }
}
