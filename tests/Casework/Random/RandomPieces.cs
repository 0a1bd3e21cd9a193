using CsCheck;

namespace Dryfit.Casework.Tests.Random;

/// <summary>A recipe, or its mirror image: what is said of the left stands on the right.</summary>
internal delegate string Saying(bool mirrored);

/// <summary>Random recipes over the words for carcases, their constructions, divisions and fillings.</summary>
internal static class RandomPieces
{
    private static readonly Gen<string> Shelves = Gen.OneOf(
        Gen.Const(""),
        Gen.Const(""),
        Gen.Int[1, 3].Select(n => $", shelves: {{ fixed: {n} }}"),
        Gen.Int[1, 3].Select(n => $", shelves: {{ adjustable: {n} }}")
    );

    private static readonly Gen<Saying> Doors = Gen.Select(
        Either("framed", "glazed", "slab"),
        Either("", ", inset", ", overlaid"),
        Gen.Int[0, 2],
        (kind, hang, leaves) =>
            (Saying)(
                mirrored =>
                    leaves == 2 ? $"doors: \"{kind} pair{hang}\""
                    : (leaves == 1) == mirrored ? $"doors: \"{kind}, hinged left{hang}\""
                    : $"doors: \"{kind}, hinged right{hang}\""
            )
    );

    private static readonly Gen<Saying> Filling = Gen.OneOf(
        Gen.Const<Saying>(_ => "drawer"),
        Gen.Select(Gen.Const("open"), Shelves, (open, shelves) => (Saying)(_ => open + shelves)),
        Gen.Select(Doors, Shelves, (doors, shelves) => (Saying)(mirrored => doors(mirrored) + shelves))
    );

    /// <summary>Whole carcases in millimetres, from small to large.</summary>
    public static Gen<Saying> Recipes { get; } =
        Gen.Select(
            Size,
            Gen.Select(Stand, Top),
            Either("", ", face frame", ", face frame: { stiles: 45, rails: 35, mullions: 30, joint: dowels }"),
            Either("", ", back: none", ", back: grooved", ", back: rabbeted", ", back: planted"),
            Either("", ", joint: dado", ", joint: dowels", ", joint: screws"),
            Either("", ", closed by: panel", ", closed by: stretchers"),
            Gen.Select(Either("pine 18", "oak 22", "birch plywood 18"), Either("", ", edging: lipping")),
            Region(2),
            (size, stand, frame, back, joint, closed, stuff, front) =>
                (Saying)(
                    mirrored =>
                        $$"""
                            piece: Random
                            units: mm
                            materials: { body: {{stuff.Item1}}, lipping: { solid: birch, thickness: 2 }, panels: birch plywood 6, panes: float glass 4,
                              backs: birch plywood 6.5, boxes: birch plywood 12, bottoms: birch plywood 6.5 }
                            carcases:
                              box: { size: {{size}}{{stand.Item1(mirrored)}}{{stand.Item2(
                                mirrored
                            )}}{{frame}}{{back}}{{joint}}{{closed}}{{stuff.Item2}},
                                front: { {{front(mirrored)}} } }
                            """
                )
        );

    private static Gen<string> Size =>
        Gen.Select(Gen.Int[300, 1800], Gen.Int[400, 2000], Gen.Int[250, 650], (w, h, d) => $"[{w}, {h}, {d}]");

    private static Gen<Saying> Stand =>
        Gen.OneOf(
            Gen.Const<Saying>(_ => ""),
            Gen.Const<Saying>(_ => ", stands on: { plinth: 80, setback: 20 }"),
            Gen.Const<Saying>(_ => ", stands on: { toe space: 100 }"),
            Gen.Select(
                Gen.Int[40, 70],
                Gen.Int[0, 2],
                (leg, at) =>
                    (Saying)(
                        mirrored =>
                            $", stands on: {{ legs: {leg}{(at == 0 ? "" : (at == 1) == mirrored ? ", at: right end" : ", at: left end")} }}"
                    )
            )
        );

    private static Gen<Saying> Top =>
        Gen.OneOf(
            Gen.Const<Saying>(_ => ""),
            Gen.Select(
                Gen.Int[0, 30],
                Gen.Int[0, 30],
                Gen.Int[0, 30],
                (front, one, other) =>
                    (Saying)(
                        mirrored =>
                            $", top: {{ overhang: {{ front: {front}, left: {(mirrored ? other : one)}, right: {(mirrored ? one : other)} }} }}"
                    )
            )
        );

    private static Gen<Saying> Region(int deep) =>
        deep == 0
            ? Filling
            : Gen.OneOf(
                Filling,
                Parts("columns", "width", deep),
                Parts("rows", "height", deep),
                Gen.Select(
                    Either("columns", "rows"),
                    Gen.Int[2, 4],
                    Filling,
                    (parts, count, of) =>
                        (Saying)(mirrored => $"{parts}: {{ equal: {count}, of: {{ {of(mirrored)} }} }}")
                )
            );

    private static Gen<Saying> Parts(string parts, string size, int deep) =>
        Gen.Select(Region(deep - 1), Gen.OneOf(Gen.Const(""), Shared, Gen.Int[90, 400].Select(mm => $"{size}: {mm}, ")))
            .List[2, 3]
            .Select(regions =>
                (Saying)(
                    mirrored =>
                    {
                        var said = regions.Select(r => $"{{ {r.Item2}{r.Item1(mirrored)} }}");
                        return $"{parts}: [ {string.Join(", ", mirrored && parts == "columns" ? said.Reverse() : said)} ]";
                    }
                )
            );

    private static Gen<string> Either(params IReadOnlyList<string> words) =>
        Gen.Int[0, words.Count - 1].Select(n => words[n]);

    private static Gen<string> Shared => Gen.Int[1, 5].Select(n => $"share: {n}/2, ");
}
