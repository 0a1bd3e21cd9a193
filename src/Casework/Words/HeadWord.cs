using Dryfit.Casework.Building;
using Dryfit.Casework.Heads;
using Dryfit.Findings;
using Dryfit.Parameters;
using Dryfit.Recipe;

namespace Dryfit.Casework.Words;

/// <summary><c>head:</c> what goes round the head of a carcase: frieze and cornice.</summary>
internal static class HeadWord
{
    private static readonly ChoiceShape Sides = new("front and ends", "front and left", "front and right", "front");

    /// <summary>How boards that go round meet at the front.</summary>
    public static Field Corners { get; } =
        new(
            "corners",
            new ChoiceShape("mitre", "splined mitre"),
            "How they meet at the front corners, glued: in a plain mitre, or with a spline across it that stops where a shape is run.",
            Default: "mitre"
        );

    public static RecordShape Moulding { get; } =
        new(
            "moulding",
            "Boards planted round the front and the ends of a carcase, mitred at the front corners, square at the back. How far they stand out is the thickness of their material.",
            "cornice: { height: 2 1/4, edge: cove 3/4 }",
            () =>
                [
                    new(
                        "height",
                        new LengthShape(LengthSign.AboveZero),
                        "From their lower to their upper edge.",
                        Default: "the shop's cornice or frieze"
                    ),
                    new(
                        "material",
                        new NameShape("material"),
                        "What they are made of.",
                        Default: "the material called mouldings, or the carcase's own"
                    ),
                    new(
                        "edge",
                        EdgeWord.Shape,
                        "The shape run along the lower edge of their outer face, along the upper one of a plinth.",
                        Default: "square"
                    ),
                    Corners,
                    new("along", Sides, "Where they go; an end against a wall has none.", Default: "front and ends"),
                ]
        );

    public static RecordShape Word { get; } =
        new(
            "head",
            "What goes round the head of a carcase, its upper edge flush with the top of the box, under the top board where there is one: a flat frieze, a moulded cornice, or the cornice planted on the frieze.",
            "head: { frieze: 4, cornice: { height: 2, edge: ogee 5/8 } }",
            () =>
                [
                    new(
                        "frieze",
                        new EitherShape(new LengthShape(LengthSign.AboveZero), Moulding, new BareShape()),
                        "A flat band: its height, or more; the key alone is one by the shop's habits.",
                        Default: "none"
                    ),
                    new(
                        "cornice",
                        new EitherShape(new LengthShape(LengthSign.AboveZero), Moulding, new BareShape()),
                        "A moulding: its height, or more; the key alone is one by the shop's habits.",
                        Default: "none"
                    ),
                ]
        );

    public static HeadPlan? Read(Fields carcase, PieceBuilder piece, Material body)
    {
        if (carcase.Map("head") is not { } fields)
            return null;
        if (!fields.Has("frieze") && !fields.Has("cornice"))
            throw new CannotBuildException(
                new InputError("What goes round the head is missing.", fields.Place, "frieze:, cornice: or both")
            );
        return new HeadPlan(
            Read(fields, "frieze", HeadRules.FriezeHeight, piece, body),
            Read(fields, "cornice", HeadRules.CorniceHeight, piece, body)
        );
    }

    /// <summary>Reads one run of boards; null where the key is not there.</summary>
    /// <param name="rule">Its height by the house.</param>
    public static SurroundPlan? Read(Fields owner, string key, Rule rule, PieceBuilder piece, Material body)
    {
        if (!owner.Has(key))
            return null;
        var fields = owner.Map(key);
        var said = fields is null ? owner : fields;
        var height = fields is null ? Length(owner, key) : fields.LengthOrNull("height", $"{key} height");
        var along = fields?.Text("along") ?? "front and ends";
        return new SurroundPlan(
            key,
            fields?.Text("material") is { } name ? piece.Materials.Get(name, said.PlaceOf("material"))
                : piece.Materials.Has("mouldings") ? piece.Materials.Get("mouldings", owner.Place)
                : body,
            height ?? piece.Shop.Length(rule, $"{key} height"),
            fields is null ? null : EdgeWord.Read(fields, "edge", piece.Scope)?.Shape,
            along is "front and ends" or "front and left",
            along is "front and ends" or "front and right",
            owner.PlaceOf(key)
        )
        {
            IsSplined = fields is not null && IsSplined(fields),
        };
    }

    public static bool IsSplined(Fields fields) => fields.Text("corners") == "splined mitre";

    private static Figure? Length(Fields owner, string key) =>
        owner.Node(key) is Scalar { IsEmpty: false } ? owner.LengthOrNull(key, $"{key} height") : null;
}
