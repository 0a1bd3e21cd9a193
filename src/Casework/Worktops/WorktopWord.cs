using Dryfit.Casework.Building;
using Dryfit.Casework.Carcases;
using Dryfit.Casework.Words;
using Dryfit.Parameters;
using Dryfit.Recipe;

namespace Dryfit.Casework.Worktops;

/// <summary>One of the recipe's <c>worktops:</c></summary>
internal static class WorktopWord
{
    public static RecordShape CutOut { get; } =
        new(
            "cut-out",
            "A hole through a worktop for a sink, a hob or the like, by the template or sheet of its maker.",
            "sink: { over: sink base, size: [760, 440], from front: 60 }",
            () =>
                [
                    new(
                        "size",
                        new ListShape(new LengthShape(LengthSign.AboveZero), 2, 2),
                        "Width, and depth from front to back.",
                        Required: true
                    ),
                    new("over", new NameShape("carcase"), "The carcase in the middle of whose width it is cut."),
                    new(
                        "from left",
                        new LengthShape(),
                        "From the left end of the worktop to it, where it is over no carcase's middle."
                    ),
                    new(
                        "from front",
                        new LengthShape(LengthSign.AboveZero),
                        "From the front edge of the worktop to it.",
                        Default: "in the middle from front to back"
                    ),
                    new(
                        "corners",
                        new LengthShape(),
                        "Radius of its corners: a square corner in a worktop cracks from its point.",
                        Default: "the shop's radius"
                    ),
                ]
        );

    public static RecordShape Word { get; } =
        new(
            "worktop",
            "A top over several carcases of a run, in one length or more, screwed from below; it lies on the carcases and adds to their height. Over a diagonal corner carcase it is a board by itself, which runs from the front edge of the one run's worktop to that of the other's, and is bolted to both where all have the same front overhang.",
            "over: [drawers, sink base, hob base]\noverhang: { front: 20 }\njoints: [1800]\ncut outs: { sink: { over: sink base, size: [760, 440] } }\n",
            () =>
                [
                    new(
                        "over",
                        new ListShape(new NameShape("carcase"), 1),
                        "The carcases it lies on, in one line and of one height.",
                        Required: true
                    ),
                    new(
                        "material",
                        new NameShape("material"),
                        "What it is made of.",
                        Default: "the material called tops, or that called body"
                    ),
                    new(
                        "overhang",
                        new EitherShape(new LengthShape(), TopWord.Overhang),
                        "One for front and ends, or by side.",
                        Default: "none"
                    ),
                    new(
                        "joints",
                        new ListShape(new LengthShape(LengthSign.AboveZero), 1, 20),
                        "From its left end to each joint between two lengths, which are bolted together from below.",
                        Default: "one length"
                    ),
                    new(
                        "edge",
                        EdgeWord.Shape,
                        "The shape run along its front and ends, past its joints; an end in a corner between worktops stays square.",
                        Default: "square"
                    ),
                    new(
                        "corner",
                        new ChoiceShape("butt", "mitre"),
                        "How it meets the worktop over the carcase that its own run returns from. Where their fronts are shaped, a butt joint is let in behind the shape, with a short mitre at the front.",
                        Default: "butt"
                    ),
                    new("cut outs", new NamedShape(CutOut, "cut-out"), "Holes for sinks, hobs and the like."),
                ]
        );

    public static NamedShape Shape { get; } = new(Word, "worktop");

    /// <summary>The names of all carcases that a worktop lies on.</summary>
    public static HashSet<string> Covered(Mapping recipe) =>
        [
            .. ((recipe["worktops"] as Mapping)?.Entries ?? [])
                .Select(entry => (entry.Value as Mapping)?["over"])
                .OfType<Sequence>()
                .SelectMany(over => over.Items.OfType<Scalar>())
                .Select(name => name.Text),
        ];

    public static TopPlan Read(Fields fields, PieceBuilder piece)
    {
        var material = fields.Text("material") is { } name
            ? piece.Materials.Get(name, fields.PlaceOf("material"))
            : piece.Materials.Get(piece.Materials.Has("tops") ? "tops" : "body", fields.Place);
        return TopWord.ReadOverhang(fields, material) with
        {
            Edge = EdgeWord.Read(fields, "edge", piece.Scope, Direction.Front, Direction.Left, Direction.Right),
        };
    }
}
