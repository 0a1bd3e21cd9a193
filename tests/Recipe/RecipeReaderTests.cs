namespace Dryfit.Recipe.Tests;

public sealed class RecipeReaderTests
{
    [Fact]
    public void Every_key_and_value_knows_its_line_column_and_length()
    {
        var tree = Reading.Tree(
            "piece: Hall shelf\nsize: [54, 23 1/4\", 4' 7 1/4\"]\nfront:\n  columns: { width: 16, open }\n"
        );

        Assert.Equal(["piece", "size", "front"], tree.Entries.Select(e => e.Key));
        var (piece, size) = ((Scalar)tree["piece"]!, (Sequence)tree["size"]!);
        Assert.Equal(("Hall shelf", 1, 8, 10), (piece.Text, piece.Place.Line, piece.Place.Column, piece.Place.Length));
        Assert.Equal(["54", "23 1/4\"", "4' 7 1/4\""], size.Items.Cast<Scalar>().Select(s => s.Text));
        Assert.Equal((2, 12, 7), (size.Items[1].Place.Line, size.Items[1].Place.Column, size.Items[1].Place.Length));
        var columns = (Mapping)((Mapping)tree["front"]!)["columns"]!;
        Assert.Equal((4, 12), (columns.Place.Line, columns.Place.Column));
        Assert.Equal(["width", "open"], columns.Entries.Select(e => e.Key));
        Assert.Equal("", ((Scalar)columns["open"]!).Text);
        Assert.Equal(
            (4, 25, 4),
            (columns["open"]!.Place.Line, columns["open"]!.Place.Column, columns["open"]!.Place.Length)
        );
    }

    [Fact]
    public void A_place_inside_a_value_looks_through_its_quotes()
    {
        var tree = Reading.Tree("a: width - 2\nb: 'width - 2'\nc: \"a\\tb\"\n");

        Assert.Equal((1, 12, 1), Where((Scalar)tree["a"]!));
        Assert.Equal((2, 13, 1), Where((Scalar)tree["b"]!));
        Assert.Equal((3, 4, 6), Where((Scalar)tree["c"]!));

        static (int, int, int) Where(Scalar s)
        {
            var place = s.PlaceOf(8, 1);
            return (place.Line, place.Column, place.Length);
        }
    }

    [Fact]
    public void A_byte_order_mark_and_any_line_end_are_taken()
    {
        var bytes = (byte[])[0xEF, 0xBB, 0xBF, .. "a: 1\r\nb: 2\rc: 3\n"u8];
        var result = RecipeReader.Read("x.yaml", bytes);

        Assert.Empty(result.Errors);
        Assert.Equal([1, 2, 3], result.Value!.Entries.Select(e => e.KeyPlace.Line));
        Assert.Equal(1, result.Value.Entries[0].KeyPlace.Column);
    }

    [Theory]
    [InlineData("", "1:1-1 The file is empty.")]
    [InlineData("# nothing yet\n", "1:1-1 The file is empty.")]
    [InlineData("---\n", "1:1-1 The file is empty.")]
    [InlineData("- a\n- b\n", "1:1-1 The file is a list; it must begin with a key.")]
    [InlineData("a shelf\n", "1:1-7 The file holds one value only; it must begin with a key.")]
    [InlineData(
        "a: 1\n---\nb: 2\n",
        "2:1-1 A second document begins here (after '---' or '...'); a file holds one recipe."
    )]
    [InlineData("a: 1\na: 2\n", "2:1-1 'a' is written twice; the first is on line 1.")]
    [InlineData("a: &x 1\n", "1:4-4 '&x' names a value to be repeated; recipes do not use YAML's anchors.")]
    [InlineData("a: *x\n", "1:4-2 '*x' repeats a value from elsewhere; recipes do not use YAML's aliases.")]
    [InlineData("a: !t 1\n", "1:4-4 A tag (beginning with '!') stands here; recipes do not use YAML's tags.")]
    [InlineData("? [a]\n: b\n", "1:3-1 A list or a set of keys stands where a key should.")]
    [InlineData("a:\n\tb: 1\n", "2:1-1 A tab indents this line; indent with spaces.")]
    [InlineData("a: 1\n \t\nb: 2\n", "2:2-1 A tab indents this line; indent with spaces.")]
    [InlineData("a:1\nb: 2\n", "1:2-1 A space is missing after the colon. [a: 1]")]
    [InlineData("a: b: c\n", "1:5-1 A second colon follows in the same value.")]
    [InlineData("a: 1\n b: 2\n", "2:3-1 This key is indented below a line that has a value already.")]
    [InlineData("a: 'x\nb: 2\n", "1:4-1 A quote is opened here and never closed.")]
    [InlineData("a: \"x\nb: 2\n", "1:4-1 A quote is opened here and never closed.")]
    [InlineData("a: \"x\" y\n", "1:8-1 The text goes on behind the closing quote.")]
    [InlineData("a: {b: 1\nc: 2\n", "1:5-1 What was opened with '{' is not closed, or a comma is missing.")]
    [InlineData("a: [1, 2\n", "1:8-1 A list opened with '[' is not closed, or a comma is missing.")]
    [InlineData("a: - 3\n", "1:4-1 '- ' begins an item of a list, and no list can begin here.")]
    [InlineData("a: @x\n", "1:4-1 A value cannot begin with '@'.")]
    [InlineData("a: > 3\n", "1:4-1 A value cannot begin with '>'.")]
    [InlineData("a:\n  b: 1\n c: 2\n", "3:2-1 This line does not line up with the keys above it.")]
    [InlineData("a: 1\nb\n", "2:1-1 A colon is missing behind this key.")]
    [InlineData("a: \"\\q\"\n", "1:4-1 A backslash inside double quotes means something special to YAML.")]
    [InlineData(": 1\n", "1:1-1 There is no key before the colon.")]
    public void What_is_no_recipe_is_told_in_a_makers_words_at_its_place(string text, string told)
    {
        Assert.Equal([told], Reading.Told(text));
    }

    [Fact]
    public void All_mistakes_of_a_file_come_in_one_go()
    {
        Assert.Equal(
            [
                "1:4-4 '&x' names a value to be repeated; recipes do not use YAML's anchors.",
                "2:1-1 'a' is written twice; the first is on line 1.",
                "3:4-4 A tag (beginning with '!') stands here; recipes do not use YAML's tags.",
                "4:5-1 A second colon follows in the same value.",
            ],
            Reading.Told("a: &x 1\na: 2\nb: !t 3\nc: d: e\n")
        );
    }

    [Fact]
    public void A_key_written_twice_still_gives_a_tree_to_check_further()
    {
        var result = Reading.Read("a: 1\na: 2\n");

        Assert.False(result.Ok);
        Assert.Equal("1", ((Scalar)result.Value!["a"]!).Text);
    }
}
