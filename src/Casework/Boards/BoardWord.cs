using Dryfit.Casework.Building;
using Dryfit.Findings;
using Dryfit.Parameters;
using Dryfit.Recipe;

namespace Dryfit.Casework.Boards;

/// <summary>One of the recipe's <c>boards:</c>: a single board with its own cuts, for all that has no word of its own.</summary>
internal static class BoardWord
{
    private static readonly (string Word, Role Role)[] Roles =
    [
        ("board", Role.Board),
        ("shelf", Role.Shelf),
        ("partition", Role.Partition),
        ("back", Role.Back),
        ("side", Role.Side),
        ("top", Role.Top),
        ("bottom", Role.Bottom),
    ];

    private static SpokenShape Side { get; } = new(SidePhrase.Describes);

    private static EitherShape SideOrSides { get; } = new(Side, new ListShape(Side, 1, 20));

    public static RecordShape Repeat { get; } =
        new(
            "repeat",
            "The same board several times in a row.",
            "repeat: { times: 5, evenly between: [left stile, right stile] }",
            () =>
                [
                    new("times", new CountShape(2, 200), "How many in all.", Required: true),
                    new(
                        "every",
                        new LengthShape(LengthSign.AboveZero),
                        "From the one to the same side of the next, thickness and gap together."
                    ),
                    new("towards", Sides.Shape, "Which way they go on.", Default: "right"),
                    new(
                        "evenly between",
                        new ListShape(new SpokenShape("the name of a part"), 2, 2),
                        "The two parts between which they stand with equal gaps; in place of `every`, and of a place along that way."
                    ),
                ]
        );

    public static RecordShape Word { get; } =
        new(
            "board",
            "A single board, for all that has no word of its own. It says how it lies, and for each way (left and right, front and back, up and down) where one of its sides is; where both are said, the board is as large as what lies between.",
            "rail:\n  lies: on edge\n  width: 60\n  left: dadoed into base left side\n  right: dadoed into base right side\n  top: 80 below top of base\n  front: 20 behind front of base left side\n",
            () =>
                [
                    new(
                        "material",
                        new NameShape("material"),
                        "What it is made of; its thickness is the material's.",
                        Default: "the material called body"
                    ),
                    new("is", new ChoiceShape([.. Roles.Select(r => r.Word)]), "What it is for.", Default: "board"),
                    new(
                        "lies",
                        LieWords.Shape,
                        "Flat, on edge, or upright (its grain up), and where its show face looks.",
                        Default: "flat, facing up, grain left to right; facing front where it stands"
                    ),
                    new(
                        "length",
                        new LengthShape(LengthSign.AboveZero),
                        "Along the grain, with what goes into others.",
                        Default: "from side to side, where both are said"
                    ),
                    new(
                        "width",
                        new LengthShape(LengthSign.AboveZero),
                        "Across the grain, with what goes into others.",
                        Default: "from side to side, where both are said"
                    ),
                    .. Sides.Words.Select(word => new Field(
                        word,
                        SideOrSides,
                        $"Where its {word} is: what it meets there and how it is joined to it, or how far it stands from what."
                    )),
                    new(
                        "centred on",
                        new SpokenShape("the name of a part, a board or a carcase"),
                        "What it is in the middle of, whichever way nothing else is said."
                    ),
                    new(
                        "joined",
                        new ListShape(Side, 1, 20),
                        "What else it lies against, and how it is joined to it: `glued to base back`."
                    ),
                    new(
                        "cuts",
                        new ListShape(BoardCutWords.Word, 1, 100),
                        "Its own cuts, besides those of its joints."
                    ),
                    new(
                        "mirrored",
                        new YesNoShape(),
                        "Whether there is a second one at the other end, with left for right in all that is said.",
                        Default: "no"
                    ),
                    new("repeat", Repeat, "The same again, several times.", Default: "one"),
                ]
        );

    public static NamedShape Shape { get; } = new(Word, "board");

    /// <summary>Reads one board, before it has a place.</summary>
    public static BoardPlan Read(string name, Fields fields, SourcePlace place, Materials materials)
    {
        var sides = new Dictionary<Direction, IReadOnlyList<SideSaid>>();
        foreach (var word in Sides.Words.Where(fields.Has))
        {
            var side = Sides.Of(word);
            IReadOnlyList<Scalar> said = fields.Node(word) is Scalar one
                ? [one]
                : [.. fields.List(word).OfType<Scalar>()];
            sides[side] = [.. said.Select(s => SidePhrase.Read(s, side, fields.Scope))];
            if (sides[side].Skip(1).FirstOrDefault(s => s is not MeetsSaid) is { } second)
                throw new CannotBuildException(
                    new InputError(
                        $"One line says where the {word} is; the others say what else it meets there.",
                        second.Place,
                        "glued to, screwed to, resting on, against, dadoed into"
                    )
                );
        }
        return new BoardPlan
        {
            Local = name,
            Fields = fields,
            Material = fields.Text("material") is { } material
                ? materials.Get(material, fields.PlaceOf("material"))
                : materials.Get("body", fields.Place),
            Role = fields.Text("is") is { } word2 ? Roles.First(r => r.Word == word2).Role : Role.Board,
            Lie = LieWords.Read(fields),
            Length = fields.LengthOrNull("length"),
            Width = fields.LengthOrNull("width"),
            Sides = sides,
            CentredOn = fields.Node("centred on") is Scalar centre ? SidePhrase.ReadFace(centre) : null,
            Joined =
            [
                .. fields
                    .List("joined")
                    .OfType<Scalar>()
                    .Select(s => SidePhrase.Read(s, null, fields.Scope))
                    .OfType<MeetsSaid>(),
            ],
            Repeat = ReadRepeat(fields),
            Place = place,
        };
    }

    private static RepeatPlan? ReadRepeat(Fields fields)
    {
        if (fields.Map("repeat") is not { } repeat)
            return null;
        if (repeat.Has("every") == repeat.Has("evenly between"))
            throw new CannotBuildException(
                new InputError(
                    repeat.Has("every") ? "They stand every so far or evenly, not both." : "How far apart is missing.",
                    repeat.Place,
                    "every: 120, or evenly between: [left stile, right stile]"
                )
            );
        return new RepeatPlan(
            repeat.Count("times"),
            repeat.LengthOrNull("every", "repeated every"),
            repeat.Text("towards") is { } way ? Sides.Of(way) : Direction.Right,
            [.. repeat.List("evenly between").OfType<Scalar>().Select(SidePhrase.ReadFace)],
            repeat.Place
        );
    }
}
