using Dryfit.Casework;
using Dryfit.Solids;

namespace Dryfit.Inspection;

/// <summary>Names the cuts of a part and carries places of its board to the piece.</summary>
internal static class CutPlaces
{
    /// <summary>The ids of cuts, by their places in the part's list: "dado-1 and groove-2"; "its cuts" where none is known.</summary>
    public static string Named(Part part, IReadOnlyList<int> cuts)
    {
        var names = cuts.Where(cut => cut < part.Cuts.Count).Select(cut => part.Cuts[cut].Id).ToList();
        return names.Count switch
        {
            0 => "its cuts",
            1 => names[0],
            _ => $"{string.Join(", ", names[..^1])} and {names[^1]}",
        };
    }

    /// <summary>The box in the piece around a box of the board.</summary>
    public static Box InPiece(Part part, Box box) => Boxes.Of([.. box.Corners().Select(part.Placed.Frame.ToWorld)]);
}
