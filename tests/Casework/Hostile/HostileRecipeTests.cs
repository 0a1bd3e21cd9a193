using Dryfit.Casework.Tests.Kit;
using static Dryfit.Casework.Tests.Kit.Recipes;

namespace Dryfit.Casework.Tests.Hostile;

/// <summary>Recipes by slip or by malice: each gets an error that says where, or a piece; never a crash.</summary>
public sealed class HostileRecipeTests
{
    private static string Box(string front, string more = "") =>
        Metric($"box: {{ size: [600, 720, 400], {more}front: {{ {front} }} }}");

    [Theory]
    [InlineData("rows: { equal: 1000000, of: drawer }")]
    [InlineData("rows: { equal: 99999999999999999999, of: drawer }")]
    [InlineData("columns: { equal: 100, of: { rows: { equal: 100, of: drawer } } }")]
    [InlineData("columns: { equal: 100, of: { rows: { equal: 100, of: { columns: { equal: 100, of: open } } } } }")]
    [InlineData("rows: { equal: -3, of: drawer }")]
    [InlineData("rows: { equal: 0, of: drawer }")]
    [InlineData("rows: { equal: 2.5, of: drawer }")]
    [InlineData("rows: []")]
    [InlineData("columns: {}")]
    [InlineData("rows: { equal: 60, of: drawer }")]
    [InlineData("columns: { equal: 60, of: { doors: slab } }")]
    [InlineData("columns: { equal: 12, of: { doors: framed pair } }")]
    [InlineData("rows: { equal: 40, of: { doors: glazed } }")]
    [InlineData("columns: [ { width: 0, open }, open ]")]
    [InlineData("columns: [ { width: -5, open }, open ]")]
    [InlineData("columns: [ { width: 1e9, open }, open ]")]
    [InlineData("columns: [ { share: -1, open }, open ]")]
    [InlineData("columns: [ { width: NaN, open }, open ]")]
    [InlineData("doors: framed pair, open")]
    [InlineData("doors: banana")]
    [InlineData("drawer: { slides: 5000 }")]
    public void Fronts_that_cannot_be_are_refused_at_their_place(string front)
    {
        Placed(Built.ErrorsOf(Box(front)));
        Placed(Built.ErrorsOf(Box(front, "face frame, ")));
    }

    [Theory]
    [InlineData("[0, 720, 400]")]
    [InlineData("[-600, 720, 400]")]
    [InlineData("[600, 720]")]
    [InlineData("[600, 720, 400, 500]")]
    [InlineData("[600, 720, 12]")]
    [InlineData("[30, 720, 400]")]
    [InlineData("[36, 720, 400]")]
    [InlineData("[600, 36, 400]")]
    [InlineData("[600, 720, 1/1000000000000000000000]")]
    [InlineData("[.inf, 720, 400]")]
    [InlineData("[.nan, 720, 400]")]
    [InlineData("[600, 720, depth]")]
    [InlineData("[box.width, 720, 400]")]
    [InlineData("[600, 720, 400 / 0]")]
    [InlineData("[\"\", 720, 400]")]
    [InlineData("[null, 720, 400]")]
    [InlineData("[[600], 720, 400]")]
    [InlineData("600")]
    public void Sizes_that_cannot_be_are_refused_at_their_place(string size)
    {
        Placed(Built.ErrorsOf(Metric($"box: {{ size: {size} }}")));
    }

    [Theory]
    [InlineData("[1e9, 720, 400]")]
    [InlineData("[1000000000, 1000000000, 1000000000]")]
    [InlineData("[600, 1000000000000000000000000000, 400]")]
    [InlineData("[600.00000000000000000001, 720, 400]")]
    [InlineData("[600, 720 + 1/3, 400 - 1/7]")]
    [InlineData("[600 + 1/1048577, 720 + 1/65537, 400]")]
    public void Sizes_beyond_sense_are_built_soundly_or_refused(string size)
    {
        SoundOrRefused(Metric($"box: {{ size: {size}, joint: dado, back: rabbeted, shelves: {{ fixed: 1 }} }}"));
    }

    [Theory]
    [InlineData("body: pine 400")]
    [InlineData("body: pine 300")]
    [InlineData("body: pine 3")]
    [InlineData("body: pine 6")]
    [InlineData("body: pine 1/100")]
    [InlineData("backs: birch plywood 18")]
    [InlineData("backs: birch plywood 380")]
    [InlineData("backs: birch plywood 500")]
    [InlineData("panels: birch plywood 18")]
    [InlineData("panels: birch plywood 60")]
    [InlineData("panes: float glass 40")]
    [InlineData("boxes: birch plywood 120")]
    [InlineData("bottoms: birch plywood 60")]
    [InlineData("fronts: oak 90")]
    [InlineData("fronts: oak 5")]
    [InlineData("tops: oak 720")]
    public void Stuff_too_thick_or_too_thin_is_built_or_refused(string material)
    {
        var lines = new Dictionary<string, string>
        {
            ["body"] = "pine 18",
            ["backs"] = "birch plywood 6.5",
            ["panels"] = "birch plywood 6",
            ["panes"] = "float glass 4",
            ["boxes"] = "birch plywood 12",
            ["bottoms"] = "birch plywood 6",
            ["fronts"] = "oak 20",
            ["tops"] = "oak 27",
        };
        var colon = material.IndexOf(':', StringComparison.Ordinal);
        lines[material[..colon]] = material[(colon + 2)..];
        foreach (var frame in (string[])["", "face frame, "])
        {
            foreach (var back in (string[])["grooved", "rabbeted", "planted"])
            {
                var recipe =
                    $"piece: P\nunits: mm\nmaterials:\n{string.Concat(lines.Select(l => $"  {l.Key}: {l.Value}\n"))}"
                    + $"carcases:\n  box: {{ size: [1200, 720, 400], {frame}back: {back}, joint: dado, top, stands on: {{ legs: 60 }}, "
                    + "front: { columns: [ drawer, { doors: framed, shelves: { fixed: 1 } }, { doors: glazed, shelves: { adjustable: 1 } } ] } }\n";
                var tried = Built.Try(recipe);
                if (!tried.Ok)
                    Placed(tried.Errors);
            }
        }
    }

    [Theory]
    [InlineData("\"\"")]
    [InlineData("\" \"")]
    [InlineData("\"kücheninsel ßåé\"")]
    [InlineData("\"櫃子\"")]
    [InlineData("\"🪑\"")]
    [InlineData("\"O'Brien's \\\"best\\\"\"")]
    [InlineData("\"../../etc\"")]
    [InlineData("\"<b>&amp;\"")]
    [InlineData("\"left side\"")]
    [InlineData("\"a.b\"")]
    [InlineData("\"10\"")]
    [InlineData("\"-\"")]
    [InlineData("\"tab\\there\"")]
    [InlineData("\"new\\nline\"")]
    [InlineData("\"rtl \\u202E mark\"")]
    [InlineData("\"lone \\uD800 half\"")]
    [InlineData("null")]
    [InlineData("true")]
    public void A_carcase_of_any_name_is_built_or_its_name_refused(string name)
    {
        SoundOrRefused(Metric($"{name}: {{ size: [600, 720, 400], front: {{ doors: slab pair }} }}"));
    }

    [Fact]
    public void A_carcase_with_a_name_of_ten_thousand_letters_is_built_or_refused()
    {
        SoundOrRefused(Metric($"{new string('a', 10_000)}: {{ size: [600, 720, 400] }}"));
    }

    [Fact]
    public void Names_that_formulas_could_not_tell_apart_are_refused()
    {
        Placed(Built.ErrorsOf(Metric("a b: { size: [600, 720, 400] }\na-b: { size: [600, 720, 400] }")));
    }

    [Fact]
    public void Names_that_differ_only_in_capitals_get_ids_of_their_own()
    {
        var piece = Built.From(Metric("box: { size: [600, 720, 400] }\nBox: { size: [600, 720, 400] }"));
        Assert.Equal(piece.Parts.Count, piece.Parts.Select(p => p.Id).Distinct(StringComparer.Ordinal).Count());
    }

    [Fact]
    public void More_parts_than_any_shop_makes_in_a_piece_are_refused()
    {
        Assert.Contains(
            "asks for more than",
            Built.ErrorOf(
                Metric(
                    "box: { size: [60000, 2400, 600], shelves: { adjustable: 50 }, front: { columns: { equal: 100, of: open } } }"
                )
            ),
            StringComparison.Ordinal
        );
    }

    [Fact]
    public void The_same_name_twice_is_refused()
    {
        Placed(Built.ErrorsOf(Metric("box: { size: [600, 720, 400] }\nbox: { size: [600, 720, 400] }")));
    }

    [Theory]
    [InlineData("carcases: {}")]
    [InlineData("carcases:")]
    [InlineData("carcases: []")]
    [InlineData("carcases: { box: }")]
    [InlineData("carcases: { box: {} }")]
    [InlineData("carcases: { box: { size: [600, 720, 400], front: } }")]
    [InlineData("carcases: { box: { size: [600, 720, 400], front: {} } }")]
    [InlineData("carcases: { box: { size: [600, 720, 400], shelves: } }")]
    [InlineData("carcases: { box: { size: [600, 720, 400], shelves: {} } }")]
    [InlineData("carcases: { box: { size: [600, 720, 400], stands on: {} } }")]
    [InlineData("carcases: { box: { size: [600, 720, 400], top: {} } }")]
    [InlineData("carcases: { box: { size: [600, 720, 400], face frame: {} } }")]
    [InlineData("carcases: { box: { size: [600, 720, 400], back: {} } }")]
    [InlineData("carcases: { box: { size: [600, 720, 400] } }\nkept: {}")]
    [InlineData("carcases: { box: { size: [600, 720, 400] } }\nkept:")]
    [InlineData("carcases: { box: { size: [600, 720, 400] } }\nkept: { chest: {} }")]
    [InlineData("carcases: { box: { size: [600, 720, 400] } }\nas cut:")]
    [InlineData("carcases: { box: { size: [600, 720, 400] } }\nas cut: { left side: {} }")]
    [InlineData("carcases: { box: { size: [600, 720, 400] } }\nas cut: { left side: }")]
    [InlineData("carcases: { box: { size: [600, 720, 400] } }\nas cut: { \"\": { length: 5 } }")]
    [InlineData("carcases: { box: { size: [600, 720, 400] } }\nas measured: { box: {} }")]
    [InlineData("carcases: { box: { size: [600, 720, 400] } }\nas measured: { box: { width: [] } }")]
    [InlineData("carcases: { box: { size: [600, 720, 400] } }\nfinishes: { }")]
    [InlineData("carcases: { box: { size: [600, 720, 400] } }\nfinishes: { plain: }")]
    [InlineData("carcases: { box: { size: [600, 720, 400] } }\naccept: []")]
    [InlineData("carcases: { box: { size: [600, 720, 400] } }\naccept: [ {} ]")]
    [InlineData("carcases: { box: { size: [600, 720, 400] } }\nparameters:")]
    [InlineData("carcases: { box: { size: [600, 720, 400] } }\nparameters: { a: }")]
    [InlineData("carcases: { box: { size: [600, 720, 400] } }\nshow: 0")]
    [InlineData("carcases: { box: { size: [600, 720, 400] } }\nshow: 1000000000")]
    public void Sections_with_nothing_in_them_are_built_or_refused(string sections)
    {
        SoundOrRefused($"piece: P\nunits: mm\nmaterials: {{ body: pine 18 }}\n{sections}\n");
    }

    [Theory]
    [InlineData("")]
    [InlineData("piece: P")]
    [InlineData("piece:\nunits:\nmaterials:\ncarcases:")]
    [InlineData("piece: P\nunits: mm\nmaterials: {}\ncarcases: { box: { size: [600, 720, 400] } }")]
    [InlineData(
        "piece: \"\"\nunits: furlongs\nmaterials: { body: pine 18 }\ncarcases: { box: { size: [600, 720, 400] } }"
    )]
    [InlineData("[]")]
    [InlineData("piece")]
    public void A_recipe_that_is_hardly_one_is_refused(string recipe)
    {
        Assert.NotEmpty(Built.ErrorsOf(recipe));
    }

    [Theory]
    [InlineData(20)]
    [InlineData(60)]
    [InlineData(100)]
    [InlineData(2000)]
    public void Regions_nested_too_deep_are_refused(int deep)
    {
        var front =
            string.Concat(Enumerable.Repeat("columns: [ { ", deep))
            + "open"
            + string.Concat(Enumerable.Repeat(" } ]", deep));
        SoundOrRefused(Box(front));
        var divided =
            string.Concat(Enumerable.Repeat("columns: [ open, { rows: [ open, { ", deep))
            + "open"
            + string.Concat(Enumerable.Repeat(" } ] } ]", deep));
        SoundOrRefused(Box(divided));
    }

    [Theory]
    [InlineData("as cut: { left side: { length: 1000000000000 } }")]
    [InlineData("as cut: { left side: { thickness: 0.0001 } }")]
    [InlineData("as cut: { left side: { width: 1/1000000007 } }")]
    [InlineData("as cut: { bottom: { thickness: 700 } }")]
    [InlineData("as cut: { door: { width: 1 } }")]
    [InlineData("as cut: { door: { height: 30 } }")]
    [InlineData("as cut: { door rails: { length: 10 } }")]
    [InlineData("as cut: { door rails: { width: 2, thickness: 3 } }")]
    [InlineData("as cut: { door stiles: { length: 10 } }")]
    [InlineData("as cut: { door panel: { thickness: 100 } }")]
    [InlineData("as cut: { drawer: { width: 5000, height: 1, length: 3 } }")]
    [InlineData("as cut: { drawer bottom: { length: 1 } }")]
    [InlineData("as measured: { box: { width: 20 } }")]
    [InlineData("as measured: { box left bay opening: { width: 1, height: 1 } }")]
    [InlineData("as measured: { box left bay opening: { width: 100000 } }")]
    public void Numbers_of_the_makers_own_that_cannot_be_are_built_as_they_are_or_refused(string rest)
    {
        var tried = Built.Try(
            Metric(
                "box: { size: [1000, 720, 400], face frame, front: { columns: [ drawer, { doors: framed } ] } }",
                rest,
                materials: "panels: birch plywood 6"
            )
        );
        if (!tried.Ok)
            Placed(tried.Errors);
    }

    [Theory]
    [InlineData("joints: { dado depth: 40 }")]
    [InlineData("joints: { dado depth: 0 }")]
    [InlineData("joints: { back groove depth: 40 }")]
    [InlineData("joints: { back groove inset: 500 }")]
    [InlineData("joints: { back play: 50 }")]
    [InlineData("joints: { back rabbet: 300 }")]
    [InlineData("joints: { dowel: 0 }")]
    [InlineData("joints: { dowel: 100, dowel length: 2000 }")]
    [InlineData("joints: { dowel length: 0, dowel room: 0 }")]
    [InlineData("gaps: { overlay edge: 100 }")]
    [InlineData("gaps: { inset: 400 }")]
    [InlineData("gaps: { stack: 1000 }")]
    [InlineData("shelves: { play: 400 }")]
    [InlineData("shelves: { setback: 400 }")]
    [InlineData("shelves: { pitch: 0 }")]
    [InlineData("shelves: { pin: 0 }")]
    [InlineData("shelves: { pin: 100, pin depth: 100 }")]
    [InlineData("shelves: { row setback: 5000 }")]
    [InlineData("shelves: { holes: 60, pitch: 1 }")]
    [InlineData("carcases: { stretchers: 500 }")]
    [InlineData("stand: { rails: 500 }")]
    [InlineData("stand: { rail setback: 500 }")]
    [InlineData("face frame: { stiles: 600 }")]
    [InlineData("doors: { stiles: 600 }")]
    [InlineData("doors: { groove depth: 200 }")]
    [InlineData("doors: { groove width: 200 }")]
    [InlineData("hinges: { cup: 500 }")]
    [InlineData("hinges: { cup depth: 100 }")]
    [InlineData("hinges: { from end: 5000 }")]
    [InlineData("drawers: { slide clearance: 500 }")]
    [InlineData("drawers: { slide step: 0 }")]
    [InlineData("drawers: { height step: 0 }")]
    [InlineData("drawers: { groove depth: 500 }")]
    [InlineData("drawers: { bottom up: 5000 }")]
    [InlineData("drawers: { packers: 5000 }")]
    public void House_rules_that_cannot_be_are_built_as_they_are_or_refused(string rule)
    {
        foreach (var frame in (string[])["", "face frame, "])
        {
            var tried = Built.Try(
                Metric(
                    $"box: {{ size: [1500, 720, 400], {frame}stands on: {{ legs: 60 }}, closed by: stretchers, front: {{ columns: "
                        + "[ { rows: [ drawer, drawer ] }, { doors: framed, shelves: { adjustable: 2 } }, { doors: slab pair, shelves: { fixed: 1 } } ] } }",
                    materials: "panels: birch plywood 6"
                ),
                $"units: mm\n{rule}\n"
            );
            if (!tried.Ok)
                Assert.All(tried.Errors, e => Assert.NotNull(e.Place));
        }
    }

    private static void SoundOrRefused(string recipe)
    {
        var tried = Built.Try(recipe);
        if (tried.Ok)
            tried.Value!.MustBeSound();
        else
            Placed(tried.Errors);
    }

    private static void Placed(IReadOnlyList<Findings.InputError> errors) =>
        Assert.All(
            errors,
            error =>
            {
                Assert.NotNull(error.Place);
                Assert.True(error.Place.Line >= 1, error.Message);
                Assert.False(string.IsNullOrWhiteSpace(error.Message));
            }
        );
}
