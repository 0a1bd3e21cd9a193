using Dryfit.Casework;
using Dryfit.Parameters;

namespace Dryfit.Cli;

/// <summary>What has sizes that can be asked about: a part, or a whole such as a door, a carcase or an opening.</summary>
/// <param name="Kind">What it is, as a key of JSON: "part", "unit", "opening".</param>
internal sealed record Sized(string Kind, string Id, string Name, IReadOnlyList<NamedSize> Sizes)
{
    public bool IsWhole => Kind != "part";

    /// <summary>Everything of a piece that has sizes: the parts, then units and openings.</summary>
    public static IReadOnlyList<Sized> All(Piece piece) =>
        [
            .. piece.Parts.Select(p => new Sized("part", p.Id, p.Name, SizesOf(p))),
            .. piece.Groups.Where(g => g.Sizes.Count > 0).Select(g => new Sized("unit", g.Id, g.Name, g.Sizes)),
            .. piece.Openings.Where(o => o.Sizes.Count > 0).Select(o => new Sized("opening", o.Id, o.Name, o.Sizes)),
        ];

    /// <summary>Every size a part has, by name, in the order a maker asks for them.</summary>
    private static IReadOnlyList<NamedSize> SizesOf(Part part)
    {
        var all = new (string Name, Figure? Figure)[]
        {
            ("length", part.Length),
            ("width", part.Width),
            ("thickness", part.Thickness),
            ("shoulder length", part.ShoulderLength),
            ("shoulder width", part.ShoulderWidth),
            ("finished length", part.FinishedLength),
            ("finished width", part.FinishedWidth),
        };
        return [.. all.Where(size => size.Figure is not null).Select(size => new NamedSize(size.Name, size.Figure!))];
    }
}
