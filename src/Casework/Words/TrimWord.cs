using Dryfit.Casework.Building;
using Dryfit.Casework.Trim;
using Dryfit.Findings;
using Dryfit.Parameters;
using Dryfit.Recipe;

namespace Dryfit.Casework.Words;

/// <summary><c>trim:</c> strips that hide a gap between two carcases on purpose.</summary>
internal static class TrimWord
{
    public static RecordShape Word { get; } =
        new(
            "trim",
            "A strip on the fronts of two carcases that hides the gap or the seam between them, side by side or one over the other, both looking straight to the front. It is fixed to one of them and lies loose on the other, so that they may move. Or a strip on the front of a carcase that stands between walls, out to the `left wall` or `right wall` or up to the `ceiling`: it is sawn to them as they were measured. That it hides its gap is checked.",
            "trim:\n  cover strip: { hides: [cupboard, old chest], width: 40, edge: round 3 }\n",
            () =>
                [
                    new(
                        "hides",
                        new ListShape(new NameShape("carcase or wall"), 2, 2),
                        "The two carcases whose gap it hides; or a carcase, and what of the room its gap is to: left wall, right wall, ceiling.",
                        Required: true
                    ),
                    new(
                        "fixed to",
                        new NameShape("carcase"),
                        "The carcase that carries it.",
                        Default: "the first named"
                    ),
                    new(
                        "width",
                        new LengthShape(LengthSign.AboveZero),
                        "Across the gap; between two carcases it lies over the middle of it, at a wall its widest place reaches there.",
                        Default: "the gap and a lap on each carcase"
                    ),
                    new(
                        "lap",
                        new LengthShape(LengthSign.AboveZero),
                        "How far it should lap over each side at least.",
                        Default: "the shop's lap"
                    ),
                    new(
                        "material",
                        new NameShape("material"),
                        "What it is made of.",
                        Default: "the material called mouldings, or that called body"
                    ),
                    new(
                        "edge",
                        EdgeWord.Shape,
                        "The shape run along both of its edges; at a wall or ceiling along the one on the carcase.",
                        Default: "square"
                    ),
                ]
        );

    public static NamedShape Shape { get; } = new(Word, "strip");

    public static TrimPlan Read(Entry entry, PieceBuilder piece)
    {
        var fields = new Fields((Mapping)entry.Value, piece.Scope);
        var hides = fields.List("hides").OfType<Scalar>().ToList();
        if (hides[0].Text == hides[1].Text)
            throw new CannotBuildException(
                new InputError(
                    $"The {entry.Key} has one carcase on both sides of its gap.",
                    hides[1].Place,
                    "two carcases that stand beside or on each other"
                )
            );
        var carrier = fields.Node("fixed to") as Scalar ?? hides[0];
        if (hides.TrueForAll(body => body.Text != carrier.Text))
            throw new CannotBuildException(
                new InputError(
                    $"The {entry.Key} does not lie on the {carrier.Text}.",
                    carrier.Place,
                    "a carcase whose gap it hides"
                )
            );
        return new TrimPlan(
            entry.Key,
            hides[0].Text,
            hides[1].Text,
            carrier.Text,
            fields.Text("material") is { } name ? piece.Materials.Get(name, fields.PlaceOf("material"))
                : piece.Materials.Has("mouldings") ? piece.Materials.Get("mouldings", entry.KeyPlace)
                : piece.Materials.Get("body", entry.KeyPlace),
            fields.LengthOrNull("width", "strip width"),
            fields.LengthOrNull("lap") ?? piece.Shop.Length(TrimRules.Lap, "lap"),
            EdgeWord.Read(fields, "edge", piece.Scope)?.Shape,
            entry.KeyPlace
        );
    }
}
