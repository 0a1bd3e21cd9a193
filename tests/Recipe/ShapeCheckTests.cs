namespace Dryfit.Recipe.Tests;

public sealed class ShapeCheckTests
{
    private static readonly RecordShape Frame = new(
        "face frame",
        "The frame on the front.",
        "{ stiles: 1 3/4 }",
        () =>
            [
                new Field("stiles", new LengthShape(), "Width of the stiles."),
                new Field("rails", new LengthShape(), "Width of the rails."),
            ]
    );

    private static readonly RecordShape Region = new(
        "region",
        "A part of the front.",
        "{ open: }",
        () =>
            [
                new Field("width", new LengthShape(), "Its width."),
                new Field("open", new BareShape(), "Nothing in it."),
                new Field(
                    "doors",
                    new PhraseShape(
                        new ChoiceShape("slab", "framed", "glazed"),
                        new ChoiceShape("single", "pair"),
                        new ChoiceShape("hinged left", "hinged right")
                    ),
                    "Doors."
                ),
                new Field("columns", new ListShape(Nested), "Regions side by side."),
            ]
    );

    private static readonly RecordShape Root = new(
        "recipe",
        "A piece.",
        "piece: Shelf",
        () =>
            [
                new Field("piece", new TextShape(), "Its name.", Required: true),
                new Field("units", new ChoiceShape("in", "mm"), "The unit.", Required: true),
                new Field("size", new ListShape(new LengthShape(LengthSign.AboveZero), 3, 3), "Width, height, depth."),
                new Field("face frame", new EitherShape(new YesNoShape(), Frame), "The frame."),
                new Field("shelves", new CountShape(0, 50), "How many."),
                new Field("front", Region, "The front."),
                new Field(
                    "materials",
                    new NamedShape(new SpokenShape("a species and a thickness"), "material"),
                    "Materials."
                ),
                new Field(
                    "reveal",
                    new EitherShape(new LengthShape(), new ChoiceShape("equal", "none")),
                    "The reveal."
                ),
            ]
    );

    private static Shape Nested => Region;

    private static IReadOnlyList<string> Told(string text) => Reading.Told(ShapeCheck.Check(Reading.Tree(text), Root));

    [Fact]
    public void A_recipe_that_fits_has_no_errors()
    {
        Assert.Empty(
            Told(
                """
                piece: Hall shelf
                units: in
                size: [54, 23 1/4", width - 2]
                face frame:
                shelves: 3
                front: { columns: [ { width: 11, open }, { doors: "pair, framed" }, { doors: hinged left glazed } ] }
                materials: { body: maple 3/4 }
                reveal: equal
                """
            )
        );
    }

    [Theory]
    [InlineData("face_frame: yes", "3:1-10 A recipe has no key 'face_frame'. [face frame]")]
    [InlineData("face-frame: yes", "3:1-10 A recipe has no key 'face-frame'. [face frame]")]
    [InlineData("shelf: 3", "3:1-5 A recipe has no key 'shelf'.")]
    [InlineData("shelve: 3", "3:1-6 A recipe has no key 'shelve'. [shelves]")]
    [InlineData("Shelves: 3", "3:1-7 A recipe has no key 'Shelves'. [shelves]")]
    [InlineData("material: {}", "3:1-8 A recipe has no key 'material'. [materials]")]
    [InlineData("size: [1, 2]", "3:7-1 The list has 2 items; it must have exactly 3.")]
    [InlineData("size: 3", "3:7-1 The single value '3' stands here; a list is wanted.")]
    [InlineData("size: { a: 1 }", "3:7-1 Keys stand here; a list is wanted.")]
    [InlineData("size: [1, [2], 3]", "3:11-1 A list stands here; a single value is wanted.")]
    [InlineData("size: [1, '', 3]", "3:11-2 A value is missing here.")]
    [InlineData("shelves: 1000000", "3:10-7 '1000000' is not from 0 to 50.")]
    [InlineData("shelves: 99999999999999999999", "3:10-20 '99999999999999999999' is not from 0 to 50.")]
    [InlineData("shelves:", "3:1-7 A value is missing here.")]
    [InlineData("face frame: maybe", "3:13-5 'maybe' is neither yes nor no.")]
    [InlineData("face frame: { stile: 2 }", "3:15-5 A face frame has no key 'stile'. [stiles]")]
    [InlineData("face frame: { stiles:2 }", "3:15-8 A space is missing after the colon. [stiles: 2]")]
    [InlineData("front: { width: min(3, 4) }", "3:24-2 '4)' is no key: the comma before it has ended a value.")]
    [InlineData("front: { open: 3 }", "3:16-1 Nothing may stand behind this key.")]
    [InlineData("front: { doors: framd pair }", "3:17-5 'framd' is no word for this place. [framed]")]
    [InlineData(
        "front: { doors: framed slab }",
        "3:24-4 'framed' and 'slab' exclude each other; only one can stand here."
    )]
    [InlineData("front: { columns: [ { widht: 3 } ] }", "3:23-5 A region has no key 'widht'. [width]")]
    public void What_does_not_fit_is_told_with_the_nearest_right_word(string line, string told)
    {
        Assert.Equal([told], Told("piece: Shelf\nunits: in\n" + line + "\n"));
    }

    [Fact]
    public void A_missing_key_is_told_at_its_word_and_a_misspelt_one_only_once()
    {
        Assert.Equal(["1:1-5 The recipe has no 'units'."], Told("piece: Shelf\n"));
        Assert.Equal(["2:1-4 A recipe has no key 'unit'. [units]"], Told("piece: Shelf\nunit: in\n"));
        Assert.Equal(["2:8-2 'im' is no word for this place. [in]"], Told("piece: Shelf\nunits: im\n"));
    }

    [Fact]
    public void Of_several_shapes_the_one_that_fits_best_is_reported_on()
    {
        var errors = ShapeCheck.Check(Reading.Tree("piece: x\nunits: in\nreveal: [1]\nface frame: [1]\n"), Root);

        Assert.Equal("a length such as 3 1/2, or a formula", errors[0].Expected);
        Assert.Equal(["3:9-1", "4:13-1"], errors.Select(e => $"{e.Place!.Line}:{e.Place.Column}-{e.Place.Length}"));
    }

    [Theory]
    [InlineData("maple 3/4", false)]
    [InlineData("birch plywood", false)]
    [InlineData("3 1/2", true)]
    [InlineData("4' 7 1/4\"", true)]
    [InlineData("width - 2", true)]
    [InlineData("if width > 3 then a else b", true)]
    [InlineData("round down(width / 3, 1/8)", true)]
    [InlineData("590 mm", true)]
    public void Speech_and_formulas_are_told_apart_by_their_look(string text, bool formula)
    {
        var either = new EitherShape(new LengthShape(), new SpokenShape("a species and a thickness"));
        var meant = Alternatives.Pick(((Mapping)Reading.Tree("a: " + text))["a"]!, either);

        Assert.Equal(formula, meant is LengthShape);
    }

    [Fact]
    public void A_hundred_thousand_wrong_keys_end_in_two_hundred_errors()
    {
        var text = "piece: x\nunits: in\n" + string.Concat(Enumerable.Range(0, 40_000).Select(i => $"shelvs{i}: 1\n"));

        Assert.Equal(201, ShapeCheck.Check(Reading.Tree(text), Root).Count);
    }
}
