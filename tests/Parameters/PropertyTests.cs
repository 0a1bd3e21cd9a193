using System.Numerics;
using System.Text;
using CsCheck;
using Dryfit.Findings;
using Dryfit.Measure;

namespace Dryfit.Parameters.Tests;

public sealed class PropertyTests
{
    private const string Recipe = """
        piece: Clay studio cupboard
        units: in
        parameters:
          width: { default: 54, from: 36, to: 72, step: 1/8, note: outside the frame }
          gap: 3/32
          doors: { is: count, default: 2 }
          style: { default: slab, choices: [slab, framed] }
          leaf: if style = slab then (width - (doors + 1) * gap) / doors else 12
        size: [width, 40, 'round(leaf / 2, 1/8)']
        back: yes
        shelves: doors * 2
        materials: { body: maple 3/4, backs: 5.2 mm }
        body: body
        front:
          rows:
            - { width: 11 1/2, open }
            - { doors: framed pair, overlay: { left: 1/2, right: 0 - 1/4 } }
        """;

    [Fact]
    public void The_recipe_to_be_mutated_is_right_as_it_stands()
    {
        Assert.Empty(Pipeline.Run(Encoding.UTF8.GetBytes(Recipe), SampleShapes.Root).Errors.Select(Recipes.Told));
    }

    [Fact]
    public void A_recipe_with_characters_lost_doubled_or_changed_is_never_more_than_wrong()
    {
        const string strays = "aw3 :-/*+(),[]{}'\"#&!|>%@.\n\t½¼′″😀\0";
        Gen.Select(Gen.Int[0, Recipe.Length - 1], Gen.Int[0, 2], Gen.Int[0, strays.Length - 1])
            .Array[1, 4]
            .Sample(
                slips =>
                {
                    var text = new StringBuilder(Recipe);
                    foreach (var (at, kind, stray) in slips)
                    {
                        if (kind == 0)
                            text.Remove(Math.Min(at, text.Length - 1), 1);
                        else
                            text.Insert(
                                Math.Min(at, text.Length),
                                kind == 1 ? text[Math.Min(at, text.Length - 1)] : strays[stray]
                            );
                    }
                    var source = text.ToString();
                    var (tree, errors) = Pipeline.Run(Encoding.UTF8.GetBytes(source), SampleShapes.Root);
                    return (tree is not null || errors.Count > 0) && errors.All(e => Placed(e, source));
                },
                iter: 2000,
                threads: 1
            );
    }

    [Fact]
    public void No_jumble_of_formula_signs_is_more_than_an_error()
    {
        string[] bits =
        [
            "width",
            "gap",
            "(",
            ")",
            "+",
            " - ",
            "-",
            "*",
            "/",
            "1/2",
            "3",
            "0",
            "min(",
            ",",
            "round down(",
            "sqrt(",
            "if ",
            " then ",
            " else ",
            " > ",
            "=",
            "\"",
            "'",
            " ",
            "mm",
            "½",
            ".",
            "not ",
            " and ",
        ];
        Gen.Int[0, bits.Length - 1]
            .Array[0, 14]
            .Select(picks => string.Concat(picks.Select(p => bits[p])))
            .Sample(
                formula =>
                {
                    var scope = new Scope(LengthUnit.Inch);
                    scope.Define(
                        "width",
                        null,
                        () => Figure.Given("width", Length.FromInches(54), new TradeOrigin("test"))
                    );
                    scope.Define(
                        "gap",
                        null,
                        () => Figure.Given("gap", Length.FromInches(0, 3, 32), new TradeOrigin("test"))
                    );
                    var scalar = new Recipe.Scalar(formula, new SourcePlace("f", 1, 1, Math.Max(1, formula.Length)));
                    var figure = scope.Length(scalar, "it");
                    return figure.Quantity.IsLength
                        && scope.Errors.All(e => e.Place!.Column <= formula.Length + 1 && e.Place.Length >= 1);
                },
                iter: 10_000,
                threads: 1
            );
    }

    /// <summary>Held against a calculator of the test's own: numerators and denominators as big whole numbers.</summary>
    [Fact]
    public void Sums_products_and_quotients_of_any_shape_are_exact()
    {
        Formula(3)
            .Sample(
                formula =>
                {
                    var length = Recipes.Size(formula.Text, "{ w: 54, g: 3/32 }").Length.Inches;
                    return length.Numerator * formula.Below == formula.Above * length.Denominator;
                },
                iter: 3000,
                threads: 1
            );
    }

    private static bool Placed(InputError error, string source)
    {
        var lines = SourceLines.Split(source);
        var place = error.Place!;
        return place.Line >= 1
            && place.Line <= lines.Count
            && place.Column >= 1
            && place.Column <= lines[place.Line - 1].Length + 1
            && ErrorText.Write(error, source).Length > 0;
    }

    /// <summary>A formula that gives a length in inches: its text and its value as a fraction.</summary>
    private static Gen<(string Text, BigInteger Above, BigInteger Below)> Formula(int depth)
    {
        var leaf = Gen.OneOf(
            Gen.Const(("w", (BigInteger)54, (BigInteger)1)),
            Gen.Const(("g", (BigInteger)3, (BigInteger)32)),
            Gen.Select(Gen.Int[0, 90], Gen.Int[0, 6], Gen.Int[0, 31])
                .Select(
                    (whole, halvings, parts) =>
                    {
                        var below = 1 << halvings;
                        var above = parts % below;
                        var text = above == 0 ? $"{whole} in" : $"{whole} {above}/{below} in";
                        return (text, (BigInteger)((whole * below) + above), (BigInteger)below);
                    }
                )
        );
        if (depth == 0)
            return leaf;
        var inner = Formula(depth - 1);
        var sum = Gen.Select(inner, inner, Gen.Bool)
            .Select(
                (a, b, minus) =>
                    (
                        $"({a.Text} {(minus ? "-" : "+")} {b.Text})",
                        (a.Above * b.Below) + ((minus ? -1 : 1) * b.Above * a.Below),
                        a.Below * b.Below
                    )
            );
        var product = Gen.Select(inner, Gen.Int[1, 4]).Select((a, n) => ($"{n} * {a.Text}", a.Above * n, a.Below));
        var quotient = Gen.Select(inner, Gen.Int[1, 4]).Select((a, n) => ($"{a.Text} / {n}", a.Above, a.Below * n));
        return Gen.OneOf(leaf, sum, product, quotient);
    }
}
