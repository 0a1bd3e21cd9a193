using Dryfit.Recipe;

namespace Dryfit.Parameters.Tests;

/// <summary>A root with every kind of shape in it, words that hold each other among them.</summary>
internal static class SampleShapes
{
    private static readonly RecordShape Overlay = new(
        "overlay",
        "How far a front laps over.",
        "overlay: { left: 1/2 }",
        () =>
            [
                new Field("left", new LengthShape(), "To the left."),
                new Field("right", new LengthShape(LengthSign.Any), "To the right."),
            ]
    );

    private static readonly RecordShape Region = new(
        "region",
        "A part of the front.",
        "{ width: 11, open }",
        () =>
            [
                new Field("width", new LengthShape(LengthSign.AboveZero), "Its width."),
                new Field("share", new NumberShape(), "Its share of what is left.", Default: "1"),
                new Field("open", new BareShape(), "Nothing in it."),
                new Field(
                    "doors",
                    new PhraseShape(
                        new ChoiceShape("slab", "framed"),
                        new ChoiceShape("single", "pair"),
                        new ChoiceShape("hinged left", "hinged right")
                    ),
                    "Doors."
                ),
                new Field("overlay", new EitherShape(new LengthShape(), Overlay), "Lap | of fronts."),
                new Field("rows", new ListShape(Inner), "Regions above each other."),
            ]
    );

    public static RecordShape Root { get; } =
        new(
            "recipe",
            "A piece in words.",
            "piece: Hall shelf\nunits: in",
            () =>
                [
                    new Field("piece", new TextShape(), "Its name.", Required: true),
                    new Field("units", new ChoiceShape("in", "mm"), "The unit.", Required: true),
                    new Field("parameters", ParameterSection.Shape, "Names for formulas."),
                    new Field(
                        "size",
                        new ListShape(new LengthShape(LengthSign.AboveZero), 3, 3),
                        "Width, height, depth."
                    ),
                    new Field("back", new YesNoShape(), "Whether it has one.", Default: "yes"),
                    new Field("shelves", new CountShape(0, 50), "How many."),
                    new Field(
                        "grades",
                        new EitherShape(new ChoiceShape("1", "2", "none"), new ListShape(new ChoiceShape("1", "2"))),
                        "Of the boards."
                    ),
                    new Field(
                        "materials",
                        new NamedShape(
                            new EitherShape(new LengthShape(), new SpokenShape("a species and a thickness")),
                            "material"
                        ),
                        "What it is made of."
                    ),
                    new Field("body", new NameShape("material"), "Of the sides."),
                    new Field("front", Region, "The front."),
                ]
        );

    private static Shape Inner => Region;
}
