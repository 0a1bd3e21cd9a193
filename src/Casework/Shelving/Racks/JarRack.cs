using Dryfit.Casework.Building;
using Dryfit.Casework.Carcases;
using Dryfit.Measure;

namespace Dryfit.Casework.Shelving.Racks;

/// <summary>Shelves for jars of spices and the like: jointed in, each with a guard along its front edge.</summary>
internal static class JarRack
{
    private const int GramsEach = 250;
    private static readonly Length Jar = Length.FromMillimetres(50);

    public static void Make(RackSite site)
    {
        var thickness = site.Material.Thickness;
        var heights = Spaces.Evenly(site.Bay.InsideHeight, thickness, site.Rack.Rows);
        var guard = site.Rule(RackRules.GuardHeight, "guard");
        var clear = heights[0].Length - guard.Length;
        if (clear <= Length.Zero)
            throw site.Refused("The shelves stand so close that nothing goes in over their guards.", "fewer shelves");
        var width = (site.InsideDepth - site.Setback - thickness).As("shelf width");
        if (width.Length <= Length.Zero)
            throw site.Refused("Setback and guard leave nothing of the shelves.", "a deeper carcase");

        var dado = site.Plan.IsLetIn;
        var depth = site.Rule(JointRules.DadoDepth, "dado depth");
        var length = (dado ? site.Bay.InsideWidth + depth + depth : site.Bay.InsideWidth).As("shelf length");
        var parts = new List<PartDraft>();
        for (var n = 0; n < heights.Count; n++)
        {
            var z = site.Bay.Inside.Min.Z + heights[n].Length;
            var shelf = site.Piece.Board(
                site.Plan.Group,
                $"{site.Prefix}jar shelf {n + 1}",
                Role.Shelf,
                site.Material,
                Lie.Of(Direction.Right, Direction.Up),
                length,
                width,
                new(site.Bay.Inside.Min.X - (dado ? depth.Length : Length.Zero), site.FrontY + thickness.Length, z),
                site.Rack.Place
            );
            PanelJoints.Tie(site.Piece, site.Plan.Joint, site.Bay.InsideLeft, shelf, Direction.Left, Axis.Y);
            PanelJoints.Tie(site.Piece, site.Plan.Joint, site.Bay.InsideRight, shelf, Direction.Right, Axis.Y);
            var strip = site.Rail(
                $"jar shelf {n + 1} guard",
                Direction.Front,
                (thickness + guard).As("guard width"),
                site.FrontY,
                z
            );
            site.Piece.Join(JointKind.Butt, shelf, strip, Direction.Back);
            parts.Add(shelf);
        }
        // One jar every 50 mm, as many behind each other as the shelf is deep.
        var each = (int)((site.Bay.Inside.Width / Jar).Floor() * (width.Length / Jar).Floor());
        site.Holds("jar rack", "jars", each * heights.Count, GramsEach, parts[^1].Reckoned.Max.Z, parts);
    }
}
