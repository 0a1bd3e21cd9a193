using Dryfit.Casework.Building;
using Dryfit.Casework.Fronts;
using Dryfit.Casework.Fronts.Handles;
using Dryfit.Casework.Words;
using Dryfit.Findings;
using Dryfit.Parameters;
using Dryfit.Recipe;

namespace Dryfit.Casework.Drawers;

/// <summary>Trays on slides behind doors.</summary>
/// <param name="Count">How many, one above the other.</param>
/// <param name="Height">Height of their sides; null for the shop's.</param>
/// <param name="At">Heights from the floor of the bay to the underside of each; empty: spread evenly.</param>
internal sealed record PullOutsPlan(
    int Count,
    Figure? Height,
    IReadOnlyList<Figure> At,
    Material? Box,
    Material? Bottom,
    HardwareFamily Slide,
    SourcePlace Place
)
{
    /// <summary>What one front that all of them are screwed to is made of; null where they slide out one by one.</summary>
    public Material? Front { get; init; }

    /// <summary>What is said of them; null where a number says all.</summary>
    public Fields? Said { get; init; }

    private static readonly CountShape Number = new(1, 12);

    private static RecordShape Written { get; } =
        new(
            "pull outs",
            "Trays on slides, behind doors or in an open bay: behind doors they stand in from the uprights, clear of doors and hinges. They are judged as drawers are. A number alone says how many.",
            "pull outs: { count: 2, height: 4, at: [2, 14] }",
            () =>
                [
                    new("count", Number, "How many, one above the other.", Required: true),
                    new(
                        "height",
                        new LengthShape(LengthSign.AboveZero),
                        "Height of their sides.",
                        Default: "the shop's height of pull-outs"
                    ),
                    new(
                        "at",
                        new ListShape(new LengthShape(), 1, 12),
                        "Heights from the floor of the bay to the underside of each, from the lowest.",
                        Default: "spread evenly"
                    ),
                    new(
                        "box",
                        new NameShape("material"),
                        "Material of their walls.",
                        Default: "the material called `boxes`, else the carcase's own"
                    ),
                    new(
                        "bottom",
                        new NameShape("material"),
                        "Material of their bottoms.",
                        Default: "the material called `bottoms`, else `backs`, else that of the box"
                    ),
                    new(
                        "front",
                        new NameShape("material"),
                        "Material of one front that closes the opening in place of doors: all of them are screwed to it and slide out together.",
                        Default: "none: each slides out by itself"
                    ),
                    FrontShapes.Hang,
                    HandleShapes.Fields[0],
                    new(
                        "slides",
                        HardwareWord.Slide,
                        "Their slides: side, under, or a family of slides of the shop file by its name.",
                        Default: "side"
                    ),
                ]
        );

    public static Shape Shape { get; } = new EitherShape(Number, Written);

    /// <summary>Whether one front is asked for that all of them are screwed to.</summary>
    public static bool HasFront(Fields region) => region.Map("pull outs")?.Has("front") == true;

    private static void RefuseFront(Fields region, Fields fields)
    {
        var idle = ((string[])["hang", "pull"]).FirstOrDefault(fields.Has);
        if (!fields.Has("front") && idle is not null)
            throw new CannotBuildException(
                new InputError(
                    $"Pull-outs without a front have no {idle}.",
                    fields.PlaceOf(idle),
                    "front: with its material, too"
                )
            );
        if (fields.Has("front") && region.Has("doors"))
            throw new CannotBuildException(
                new InputError(
                    "Pull-outs behind doors have no front of their own.",
                    fields.PlaceOf("front"),
                    "the doors or the front"
                )
            );
    }

    public static PullOutsPlan? Read(Fields region, PieceBuilder piece)
    {
        if (!region.Has("pull outs"))
            return null;
        var place = region.PlaceOf("pull outs");
        if (region.Map("pull outs") is not { } fields)
            return new PullOutsPlan(
                region.Count("pull outs"),
                Height: null,
                At: [],
                Box: null,
                Bottom: null,
                piece.Families.Slide("side", place),
                place
            );
        RefuseFront(region, fields);
        var slides = fields.Text("slides") ?? "side";
        if (
            slides is "runners" or "side hung"
            || piece.Families.Slide(slides, fields.PlaceOf("slides")) is not { } slide
            || (slide.Kind != HardwareKinds.SideSlide && slide.Kind != HardwareKinds.UnderSlide)
        )
            throw new CannotBuildException(
                new InputError(
                    "A pull-out runs on slides that are bought.",
                    fields.PlaceOf("slides"),
                    "`slides: side`, or `slides: under`"
                )
            );
        var at = fields
            .List("at")
            .OfType<Scalar>()
            .Select((scalar, n) => piece.Scope.Length(scalar, $"height of pull-out {n + 1}"))
            .ToList();
        var count = fields.Count("count");
        if (at.Count > 0 && at.Count != count)
            throw new CannotBuildException(
                new InputError(
                    $"There are {count} pull-outs and {at.Count} heights for them.",
                    fields.PlaceOf("at"),
                    "a height for each, or none"
                )
            );
        return new PullOutsPlan(
            count,
            fields.LengthOrNull("height", "height of a pull-out"),
            at,
            Named("box"),
            Named("bottom"),
            slide,
            place
        )
        {
            Front = Named("front"),
            Said = fields,
        };

        Material? Named(string key) =>
            fields.Text(key) is { } name ? piece.Materials.Get(name, fields.PlaceOf(key)) : null;
    }
}
