using CsCheck;
using Dryfit.Findings;

namespace Dryfit.Recipe.Tests;

public sealed class ErrorTextTests
{
    private static string Written(string source, int line, int column, int length) =>
        ErrorText.Write(new InputError("Wrong.", new("r.yaml", line, column, length)), source);

    [Fact]
    public void An_error_shows_its_place_its_line_what_was_expected_and_what_was_meant()
    {
        var error = new InputError(
            "A recipe has no key 'face_frame'.",
            new("r.yaml", 2, 1, 10),
            "one of face frame, front",
            "face frame"
        );

        Assert.Equal(
            """
            r.yaml:2:1: A recipe has no key 'face_frame'.
              2 | face_frame: yes
                | ^^^^^^^^^^
               expected: one of face frame, front
               did you mean: face frame

            """,
            ErrorText.Write(error, "piece: x\nface_frame: yes\n")
        );
    }

    [Fact]
    public void An_error_of_the_whole_file_or_of_a_text_not_at_hand_is_its_message_alone()
    {
        Assert.Equal("Wrong.\n", ErrorText.Write(new InputError("Wrong.", null), "a: 1"));
        Assert.Equal("r.yaml:7:1: Wrong.\n", Written("a: 1", 7, 1, 1));
        Assert.Equal("r.yaml:1:4: Wrong.\n", ErrorText.Write(new InputError("Wrong.", new("r.yaml", 1, 4, 1)), null));
    }

    [Theory]
    [InlineData("a:\tbig", 4, 3, "a:  big", 4, 3)]
    [InlineData("机: big", 4, 3, "机: big", 4, 3)]
    [InlineData("e\u0301: big", 5, 3, "e\u0301: big", 3, 3)]
    [InlineData("😀: big", 5, 3, "😀: big", 4, 3)]
    [InlineData("a: 机机", 4, 2, "a: 机机", 3, 4)]
    [InlineData("a: \u0007b", 4, 2, "a: \uFFFDb", 3, 2)]
    [InlineData("a: ", 9, 3, "a: ", 3, 1)]
    public void Carets_stand_under_the_text_whatever_the_characters_width(
        string line,
        int column,
        int length,
        string shown,
        int before,
        int carets
    )
    {
        var lines = Written(line, 1, column, length).Split('\n');

        Assert.Equal("  1 | " + shown, lines[1]);
        Assert.Equal("    | " + new string(' ', before) + new string('^', carets), lines[2]);
    }

    [Fact]
    public void A_long_line_is_cut_around_the_error()
    {
        var lines = Written(new string('a', 500) + "BAD" + new string('b', 500), 1, 501, 3).Split('\n');

        Assert.True(lines[1].Length < 120);
        Assert.Equal("BAD", lines[1].Substring(lines[2].IndexOf('^', StringComparison.Ordinal), 3));
    }

    [Fact]
    public void Colour_is_set_only_when_asked_for()
    {
        Assert.DoesNotContain('\u001b', Written("a: 1", 1, 1, 1));
        Assert.Contains(
            "\u001b[31m^\u001b[0m",
            ErrorText.Write(new InputError("Wrong.", new("r.yaml", 1, 1, 1)), "a: 1", colour: true),
            StringComparison.Ordinal
        );
    }

    [Fact]
    public void Errors_are_put_in_the_order_of_the_text_one_file_after_the_other()
    {
        InputError At(string file, int line, int column) => new($"{file}{line}:{column}", new(file, line, column, 1));

        Assert.Equal(
            ["whole", "r1:2", "r1:3", "r7:1", "s2:1", "s4:4"],
            InputErrors
                .InTextOrder([
                    At("r", 7, 1),
                    At("s", 4, 4),
                    At("r", 1, 3),
                    new("whole", null),
                    At("r", 1, 2),
                    At("s", 2, 1),
                ])
                .Select(e => e.Message)
        );
    }

    [Fact]
    public void One_line_is_found_as_splitting_would_find_it()
    {
        Gen.Int[0, 3]
            .Array[0, 12]
            .Select(picks => string.Concat(picks.Select(p => "a\n\r "[p])))
            .Sample(text =>
            {
                var lines = SourceLines.Split(text);
                return Enumerable.Range(1, lines.Count).All(n => SourceLines.Line(text, n) == lines[n - 1])
                    && SourceLines.Line(text, lines.Count + 1) is null;
            });
    }
}
