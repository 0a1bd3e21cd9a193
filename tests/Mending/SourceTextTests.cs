using System.Text;
using CsCheck;
using Dryfit.Findings;

namespace Dryfit.Mending.Tests;

public sealed class SourceTextTests
{
    [Fact]
    public void Every_other_byte_stays_what_it_was()
    {
        byte[] before = [0xEF, 0xBB, 0xBF, .. "# Schränke\r\na:\t390 # “öde”\n\rb: 5\r\n"u8];
        byte[] after = [0xEF, 0xBB, 0xBF, .. "# Schränke\r\na:\t397.5 # “öde”\n\rb: 6\r\n"u8];
        var text = new SourceText("a.yaml", before);

        var edited = text.With([
            new Edit(new SourcePlace("a.yaml", 4, 4, 1), "5", "6"),
            new Edit(new SourcePlace("other.yaml", 1, 1, 1), "#", "!"),
            new Edit(new SourcePlace("a.yaml", 2, 4, 3), "390", "397.5"),
        ]);

        Assert.Equal(after, edited.Bytes.ToArray());
    }

    [Fact]
    public void What_does_not_stand_there_is_not_taken_out()
    {
        var text = Shop.Text("a.yaml", "a: 390\n");
        Assert.False(text.Holds(new SourcePlace("a.yaml", 9, 1, 3), "390"));
        Assert.Throws<InvalidOperationException>(() =>
            text.With([new Edit(new SourcePlace("a.yaml", 1, 3, 3), "390", "397")])
        );
    }

    [Fact]
    public void An_edit_and_its_opposite_give_the_file_back()
    {
        var line = OneOf("é", "\t", "𝄞", "x", " ", "#", "\"").Array[0, 8].Select(string.Concat);
        var ends = OneOf("\n", "\r\n", "\r");
        Gen.Select(line, line, ends, Gen.Int[1, 99999], Gen.Int[1, 99999])
            .Sample(
                (before, behind, end, old, now) =>
                {
                    var place = new SourcePlace("a", 2, before.Length + 1, $"{old}".Length);
                    var text = new SourceText("a", Encoding.UTF8.GetBytes($"{behind}{end}{before}{old}{behind}{end}"));
                    var there = text.With([new Edit(place, $"{old}", $"{now}")]);
                    Assert.Equal($"{behind}{end}{before}{now}{behind}{end}", there.Text);
                    var back = there.With([new Edit(place, $"{now}", $"{old}")]);
                    Assert.Equal(text.Bytes.ToArray(), back.Bytes.ToArray());
                }
            );
    }

    private static Gen<string> OneOf(params string[] texts) => Gen.Int[0, texts.Length - 1].Select(n => texts[n]);
}
