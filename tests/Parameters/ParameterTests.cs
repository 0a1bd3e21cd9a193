using Dryfit.Measure;

namespace Dryfit.Parameters.Tests;

public sealed class ParameterTests
{
    [Fact]
    public void A_parameter_may_be_a_value_alone_or_written_out_in_any_order()
    {
        var scope = Recipes.Bind(
            "parameters:\n  inner: width - 2 * side\n  width: { default: 54, from: 36, to: 72, step: 1/8 }\n  side: 3/4\n"
        );

        Assert.Empty(scope.Errors);
        Assert.Equal(new Rational(105, 2), scope.Named("inner")!.Length.Inches);
    }

    [Fact]
    public void A_value_set_from_outside_takes_the_place_of_the_default()
    {
        var scope = Recipes.Bind(
            "parameters:\n  width: { default: 54, from: 36, to: 72, step: 1/8 }\n",
            LengthUnit.Inch,
            new Setting("width", "48 1/2")
        );

        Assert.Empty(scope.Errors);
        Assert.Equal(new Rational(97, 2), scope.Named("width")!.Length.Inches);
        Assert.Equal(new GivenReason("width", new SetOrigin("48 1/2")), scope.Named("width")!.Reason);
    }

    [Theory]
    [InlineData("80", "1:7-2 'width' is 80 in; it must be from 36 in to 72 in. [72 in]")]
    [InlineData("20", "1:7-2 'width' is 20 in; it must be from 36 in to 72 in. [36 in]")]
    [InlineData("54 1/16", "1:7-7 'width' is 54 1/16 in, which is no whole number of steps of 1/8 in from 36 in.")]
    [InlineData("54 kg", "1:10-2 Something is missing between '54' and 'kg'.")]
    public void A_value_out_of_range_names_the_range(string value, string told)
    {
        Assert.Equal(
            [told],
            Recipes.Told(
                "parameters:\n  width: { default: 54, from: 36, to: 72, step: 1/8 }\n",
                LengthUnit.Inch,
                new Setting("width", value)
            )
        );
    }

    [Theory]
    [InlineData("v: { default: ~, is: name }", "'v' is a name or a word, and '~' is none.")]
    [InlineData("v: { default: true, is: name }", "'v' is a name or a word, and 'true' is none.")]
    [InlineData("v: { default: oak, choices: [oak, null] }", "'v' is a name or a word, and 'null' is none.")]
    public void What_reads_as_nothing_or_yes_is_no_name(string parameter, string says) =>
        Assert.Contains(
            says,
            Assert.Single(Recipes.Told($"parameters: {{ {parameter} }}\n", LengthUnit.Inch)),
            StringComparison.Ordinal
        );

    [Fact]
    public void A_setting_for_no_parameter_names_the_nearest()
    {
        Assert.Equal(
            ["1:1-6 There is no parameter 'witdth' to set. [width]"],
            Recipes.Told("parameters: { width: 54 }\n", LengthUnit.Inch, new Setting("witdth", "3"))
        );
        Assert.Equal(
            ["1:1-1 There is no parameter 'w' to set."],
            Recipes.Told("sizes: { a: 1 }\n", LengthUnit.Inch, new Setting("w", "3"))
        );
    }

    [Theory]
    [InlineData("{ default: 3 1/2, is: count }", "2:17-5 This comes to 7/2, which is no whole number.")]
    [InlineData("{ default: 3 mm, is: number }", "2:17-4 A length stands here; a plain number is wanted.")]
    [InlineData("{ default: 14, choices: [12, 16] }", "2:17-2 'a' is 14 in; it must be one of its choices.")]
    [InlineData("{ default: slap, choices: [slab, framed] }", "2:17-4 'a' cannot be 'slap'. [slab]")]
    [InlineData("{ default: 3, is: count, to: 2 in }", "2:35-4 'a' is a plain number, and this is a length.")]
    [InlineData("{ default: 3, step: 0 }", "2:26-1 A step is above zero.")]
    public void A_parameter_that_contradicts_itself_is_told(string word, string told)
    {
        Assert.Equal([told], Recipes.Told($"parameters:\n  a: {word}\n"));
    }

    [Theory]
    [InlineData("side bay", "2:3-8 'side bay' cannot be used in formulas. [side_bay]")]
    [InlineData("if", "2:3-2 'if' means something in formulas; it cannot name a parameter.")]
    [InlineData("3rd", "2:3-3 '3rd' cannot be used in formulas.")]
    public void A_name_that_formulas_cannot_use_is_told(string name, string told)
    {
        Assert.Equal([told], Recipes.Told($"parameters:\n  {name}: 3\n"));
    }

    [Theory]
    [InlineData("gaps: { a: 0 - 1 }", "1:12-5 This comes to -1 in; it cannot be less than zero.")]
    [InlineData("counts: { a: 2 * 11 }", "1:14-6 This comes to 22; it must be from 1 to 20.")]
    [InlineData("counts: { a: 1 / 2 }", "1:14-5 This comes to 1/2, which is no whole number.")]
    public void What_a_place_allows_is_held_against_what_its_formula_gives(string text, string told)
    {
        Assert.Equal([told], Recipes.Told(text + "\n"));
    }

    [Fact]
    public void A_plain_number_is_given_and_a_formula_keeps_its_text_and_inputs()
    {
        Assert.IsType<GivenReason>(Recipes.Size("3 1/2").Reason);
        var formula = Assert.IsType<FormulaReason>(
            Assert.IsType<NamedReason>(Recipes.Size("w - 2 * g", "{ w: 20, g: 1/8 }").Reason).Of.Reason
        );
        Assert.Equal("w - 2 * g", formula.Text);
        Assert.Equal(["w", "g"], formula.Inputs.Select(i => i.Name));
        Assert.Equal(3, formula.Place.Line);
    }

    [Fact]
    public void A_value_that_could_not_be_worked_out_is_not_held_against_its_range()
    {
        Assert.Equal(
            ["3:6-1 These lean on each other in a circle: a -> b -> a."],
            Recipes.Told("parameters:\n  a: { default: b, from: 28, to: 40 }\n  b: a\n")
        );
    }
}
