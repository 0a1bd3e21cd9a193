using CsCheck;
using Dryfit.Casework.Building;
using Dryfit.Measure;
using static Dryfit.Casework.Tests.Fronts.FrontBench;

namespace Dryfit.Casework.Tests.Fronts;

/// <summary>Fronts in openings of any size: built soundly, or refused in words.</summary>
public sealed class FrontPropertyTests
{
    private static readonly Material[] Stock =
    [
        Stuff("panels", MaterialKind.Solid, "10 mm"),
        Stuff("panes", MaterialKind.Glass, "3 mm", 2500),
        Stuff("slabs", MaterialKind.Sheet, "18 mm"),
        Stuff("edging", MaterialKind.Sheet, "1 mm"),
        Stuff("boxes", MaterialKind.Solid, "12 mm"),
        Stuff("bottoms", MaterialKind.Sheet, "5.2 mm"),
    ];

    private static readonly Gen<string> Doors = Gen.OneOf(
        Gen.Const("framed"),
        Gen.Const("framed pair, overlaid"),
        Gen.Const("glazed, hinged right"),
        Gen.Const("glazed pair"),
        Gen.Const("{ kind: slab, material: slabs }"),
        Gen.Const("{ kind: slab, material: slabs, leaves: pair, hang: overlaid, overlay: 7 }"),
        Gen.Const("{ kind: framed, hinged: right, stiles: 48, bottom rail: 90, hinges: 3 }"),
        Gen.Const("{ kind: framed, middle rails: 1, muntins: 1, stiles: 45, rails: 45 }"),
        Gen.Const("{ kind: glazed, bars: { columns: 2, rows: 2 }, leaves: pair, stiles: 40 }"),
        Gen.Const("{ kind: glazed, panes held by: groove, middle rails: { equal: 2 }, hinged: outside }"),
        Gen.Const("{ kind: slab, material: slabs, leaves: pair, meeting: { rebate: 9, closes first: right } }"),
        Gen.Const("{ kind: framed, leaves: pair, meeting: rebated, pull: knob }"),
        Gen.Const("{ kind: framed, hang: rebated, pull: pull }")
    );

    private static readonly Gen<(int Width, int Height, bool Frame)> Openings = Gen.Select(
        Gen.Int[20, 1500],
        Gen.Int[20, 2200],
        Gen.Bool
    );

    [Fact]
    public void Doors_fit_together_in_any_opening_or_are_refused() =>
        Gen.Select(Doors, Openings)
            .Sample((said, opening) => IsSound(Bench(opening), bench => bench.Doors(said)), iter: 60, threads: 1);

    [Fact]
    public void Drawers_fit_together_in_any_opening_or_are_refused() =>
        Gen.Select(Gen.OneOf(Gen.Const("inset"), Gen.Const("overlaid")), Openings)
            .Sample((said, opening) => IsSound(Bench(opening), bench => bench.Drawer(said)), iter: 60, threads: 1);

    private static FrontBench Bench((int Width, int Height, bool Frame) opening) =>
        new(
            LengthUnit.Millimetre,
            $"{opening.Width} mm",
            $"{opening.Height} mm",
            opening.Frame,
            reach: "12 mm",
            depth: "480 mm",
            materials: Stock
        );

    private static bool IsSound(FrontBench bench, Action<FrontBench> build)
    {
        try
        {
            build(bench);
        }
        catch (CannotBuildException refused)
        {
            return refused.Error is { Place: not null, Expected: not null };
        }
        var byId = bench.Piece.Parts.ToDictionary(p => p.Id, StringComparer.Ordinal);
        return SquareFit.Overlaps(bench.Piece.Parts).Count == 0
            && bench.Piece.Joints.All(j => SquareFit.Gap(byId[j.Receives], byId[j.Enters], j.Into) == j.Play);
    }
}
