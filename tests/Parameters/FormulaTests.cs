using Dryfit.Measure;

namespace Dryfit.Parameters.Tests;

public sealed class FormulaTests
{
    private const string Names =
        "{ width: 54, depth: 600 mm, drawers: { is: count, default: 4 }, style: { default: slab, choices: [slab, framed] } }";

    // Expected values worked by hand: numerator and denominator in inches.
    [Theory]
    [InlineData("3 1/2", 7, 2)]
    [InlineData("3-1/2", 7, 2)]
    [InlineData("-3 1/2", -7, 2)]
    [InlineData("width - 2", 52, 1)]
    [InlineData("width - 1 1/2", 105, 2)]
    [InlineData("width - 1-1/2", 105, 2)]
    [InlineData("width / 2", 27, 1)]
    [InlineData("width / 3", 18, 1)]
    [InlineData("width / 7", 54, 7)]
    [InlineData("width/2 + 1/8", 217, 8)]
    [InlineData("2 * width", 108, 1)]
    [InlineData("2 * 3 + 1", 7, 1)]
    [InlineData("(width - 2) / 2", 26, 1)]
    [InlineData("width - 25.4 mm", 53, 1)]
    [InlineData("4' 7 1/4\" - 1", 217, 4)]
    [InlineData("depth + 2", 3254, 127)]
    [InlineData("width / drawers", 27, 2)]
    [InlineData("width / 12 in * 1 in", 9, 2)]
    [InlineData("width * depth / depth", 54, 1)]
    [InlineData("min(width, 36)", 36, 1)]
    [InlineData("max(width, 36, 60)", 60, 1)]
    [InlineData("round(width / 7, 1/8)", 31, 4)]
    [InlineData("round down(width / 7, 1/8)", 61, 8)]
    [InlineData("round up(width / 7, 1/8)", 31, 4)]
    [InlineData("sqrt(3 in * 3 in + 4 in * 4 in)", 5, 1)]
    [InlineData("if width > 48 then 3 else 2", 3, 1)]
    [InlineData("if width > 48 and depth < 20 then 3 else 2", 2, 1)]
    [InlineData("if not width > 48 or drawers = 4 then 3 else 2", 3, 1)]
    [InlineData("if style = slab then 3/4 else 7/8", 3, 4)]
    [InlineData("if style != framed then 3/4 else 7/8", 3, 4)]
    [InlineData("if width <= 36 then 1 / 0 else if width > 50 then 2 else 3", 2, 1)]
    [InlineData("width - -2", 56, 1)]
    [InlineData("width × 2 ÷ 4", 27, 1)]
    [InlineData("54 / 3 1/2", 108, 7)]
    public void A_formula_is_worked_out_exactly(string formula, int numerator, int denominator)
    {
        Assert.Equal(new Rational(numerator, denominator), Recipes.Size(formula, Names).Length.Inches);
    }

    [Fact]
    public void A_bare_number_is_in_the_recipes_unit()
    {
        Assert.Equal(598, Recipes.Size("width - 2", "{ width: 600 }", LengthUnit.Millimetre).Length.Millimetres);
    }

    [Fact]
    public void A_root_is_rounded_once_to_a_640th_of_a_millimetre()
    {
        // The square root of 2 is 1.41421356...; 25.4 mm times that is 35.9210245 mm; 640 of them are 22989.4557.
        var root = Recipes.Size("sqrt(1 in * 1 in + 1 in * 1 in)").Length;

        Assert.Equal(new Rational(22989, 640), root.Millimetres);
    }

    [Theory]
    [InlineData("width +", "3:12-1 The formula ends too early.")]
    [InlineData("width * (2 + 3", "3:14-1 A bracket is opened here and never closed.")]
    [InlineData("width)", "3:11-1 This bracket closes nothing.")]
    [InlineData(
        "width-2",
        "3:11-1 Minus needs a space on both sides; a hyphen only joins a whole number and a fraction, as in 3-1/2. [width - 2]"
    )]
    [InlineData(
        "width -2",
        "3:12-1 Minus needs a space on both sides; a hyphen only joins a whole number and a fraction, as in 3-1/2. [width - 2]"
    )]
    [InlineData("wdith - 2", "3:6-5 There is no name 'wdith'. [width]")]
    [InlineData("width depth", "3:6-11 Something is missing between the words of 'width depth'. [width_depth]")]
    [InlineData("width 2", "3:12-1 Something is missing between 'width' and '2'.")]
    [InlineData("width + * 2", "3:14-1 '*' cannot stand here; a value is missing.")]
    [InlineData("width * depth", "3:6-13 An area stands here; a length is wanted.")]
    [InlineData("width + drawers", "3:14-7 A plain number cannot be added to a length.")]
    [InlineData("width - width * 2 * depth", "3:14-17 An area cannot be taken from a length.")]
    [InlineData("drawers", "3:6-7 A plain number stands here; a length is wanted.")]
    [InlineData("width / 0", "3:14-1 This divides by zero.")]
    [InlineData("width / (drawers - 4)", "3:14-13 This divides by zero.")]
    [InlineData("width / 1/2", "3:14-3 Divided by 1/2 can be read in two ways. [(1/2)]")]
    [InlineData("mn(width, 2)", "3:6-2 There is no function 'mn'. [min]")]
    [InlineData("min(width)", "3:6-10 The brackets hold 1 values; that is not what is wanted here.")]
    [InlineData("round(width)", "3:6-12 The step to round to is missing.")]
    [InlineData("round(width, 0)", "3:19-1 A step to round to is above zero.")]
    [InlineData("sqrt(0 - 4)", "3:6-11 A negative number has no root.")]
    [InlineData("sqrt(width)", "3:6-11 This takes the root of a length.")]
    [InlineData("if width > 3 then 2", "3:6-2 An 'if' needs its 'then' and its 'else'.")]
    [InlineData("if style = slap then 2 else 3", "3:17-4 'style' can never be 'slap'. [slab]")]
    [InlineData("style + 2", "3:6-5 'style' is a word (slab), not a size.")]
    [InlineData("width > 3", "3:12-1 '>' cannot stand here.")]
    [InlineData("NaN", "3:6-3 There is no name 'NaN'.")]
    [InlineData(".nan", "3:7-1 A digit is missing after the point.")]
    [InlineData("54 $", "3:9-1 '$' has no meaning here.")]
    [InlineData("54 / width * 1", "3:11-5 A number without a unit is divided by a length.")]
    [InlineData("2000000", "3:6-7 This is longer than a kilometre.")]
    public void What_is_wrong_is_told_at_its_place(string formula, string told)
    {
        Assert.Equal([told], Recipes.Told($"parameters: {Names}\nsizes:\n  a: {formula}\n"));
    }

    [Fact]
    public void Errors_of_all_formulas_come_in_one_go_and_each_once()
    {
        Assert.Equal(
            ["2:6-3 There is no name 'two'.", "3:8-1 The formula ends too early."],
            Recipes.Told("parameters:\n  a: two\n  b: a +\nsizes:\n  x: a * 2\n  y: b + a\n")
        );
    }

    [Fact]
    public void A_circle_is_told_whole_and_once()
    {
        Assert.Equal(
            ["4:6-1 These lean on each other in a circle: a -> b -> c -> a."],
            Recipes.Told("parameters:\n  a: b + 1\n  b: c + 1\n  c: a + 1\nsizes: { x: a, y: b, z: c + a }\n")
        );
    }

    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void A_chain_of_ten_thousand_names_is_one_clear_error_in_either_order(bool forwards)
    {
        var lines = Enumerable.Range(1, 10_000).Select(i => $"  p{i}: p{i - 1} + 1");
        var text = "parameters:\n  p0: 1\n" + string.Join('\n', forwards ? lines : lines.Reverse()) + "\n";

        var told = Assert.Single(Recipes.Told(text));
        Assert.Contains("leans on names that lean on names, more than 64 in a row.", told, StringComparison.Ordinal);
    }

    [Fact]
    public void A_number_that_doubles_its_digits_again_and_again_is_stopped()
    {
        var lines = Enumerable.Range(1, 60).Select(i => $"  p{i}: p{i - 1} * p{i - 1}");
        var text = "parameters:\n  p0: { is: number, default: 7 }\n" + string.Join('\n', lines) + "\n";

        Assert.Contains(
            "The number grows beyond all measure.",
            Assert.Single(Recipes.Told(text)),
            StringComparison.Ordinal
        );
    }

    [Fact]
    public void Deep_brackets_and_long_formulas_are_refused()
    {
        Assert.Contains(
            "nested more than 16",
            Assert.Single(Recipes.Told($"sizes:\n  a: {new string('(', 400)}1{new string(')', 400)}\n")),
            StringComparison.Ordinal
        );
        Assert.Contains(
            "at most 1000 characters",
            Assert.Single(Recipes.Told($"sizes:\n  a: {string.Concat(Enumerable.Repeat("1 + ", 300))}1\n")),
            StringComparison.Ordinal
        );
        Assert.Equal(201, Recipes.Size(string.Concat(Enumerable.Repeat("1 + ", 200)) + "1").Length.Inches);
    }

    [Fact]
    public void Where_sizes_could_not_be_defined_only_names_without_a_dot_are_told()
    {
        var scope = new Scope(LengthUnit.Inch);
        scope.LeaveSizesOpen();
        var tree = Recipes.Tree("parameters: { a: base.depth - 1, b: dpeth - 1, c: a + 1, depth: 2 }\n");
        ParameterSection.Bind(tree["parameters"] as Recipe.Mapping, [], scope);
        Binding.CheckFormulas(tree, Recipes.Root, scope);
        scope.WorkOutAll();

        Assert.Equal(["1:37-5 There is no name 'dpeth'. [depth]"], scope.Errors.Select(Recipes.Told));
    }
}
