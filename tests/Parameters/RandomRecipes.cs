using CsCheck;
using Dryfit.Recipe;

namespace Dryfit.Parameters.Tests;

/// <summary>Recipes made up from their shapes, some values of which do not belong.</summary>
internal static class RandomRecipes
{
    private const int Deepest = 4;

    private static readonly Gen<string> Stray = AnyOf(
        "3",
        "3 1/2",
        "true",
        "yes",
        "no",
        "null",
        "~",
        "''",
        "' '",
        "\"3\"",
        "w - 2",
        "slab",
        "framed pair",
        "[1, 2, 3]",
        "[]",
        "{}",
        "{ a: 1 }",
        "1.5",
        "-2",
        "0x10",
        ".5",
        "+3",
        "1e2",
        "maple 3/4",
        "in",
        "1",
        "999",
        "007",
        "equal"
    );

    private static readonly Gen<string> Length = AnyOf(
        "3 1/2",
        "54",
        ".5",
        "4' 7\"",
        "590 mm",
        "w - 2",
        "w / 3",
        "min(w, 3)",
        "if w > 3 then 2 else 1",
        "2.50"
    );

    public static Gen<string> Of(RecordShape root) => Value(root, 0);

    private static Gen<string> AnyOf(params string[] words) => Gen.Int[0, words.Length - 1].Select(i => words[i]);

    /// <summary>One value in YAML's flow style.</summary>
    private static Gen<string> Value(Shape shape, int depth) =>
        Gen.Int[0, 19].SelectMany(n => n == 0 && depth > 0 ? Stray : Fitting(shape, depth));

    private static Gen<string> Fitting(Shape shape, int depth) =>
        shape switch
        {
            LengthShape or QuantityShape => Length,
            CountShape => AnyOf("3", "0", "7", "2 * 3", "\"4\""),
            NumberShape => AnyOf("3", "1/2", "0.25", "1 / 3"),
            TextShape or NameShape => AnyOf(
                "Hall shelf",
                "3",
                "true",
                "null",
                "'a, b'",
                "body",
                "x: y".Replace(": ", " ", StringComparison.Ordinal)
            ),
            SpokenShape => AnyOf("maple 3/4", "plywood", "12"),
            YesNoShape => AnyOf("yes", "no", "true", "false", ""),
            BareShape => AnyOf("", "''"),
            ChoiceShape choice => AnyOf([.. choice.Words]),
            PhraseShape phrase => AnyOf(
                "slab",
                "framed pair",
                "'pair, framed'",
                "hinged left slab",
                "hinged right single framed"
            ),
            EitherShape either => Gen.OneOf([.. Alternatives.Flatten(either).Select(s => Value(s, depth))]),
            ListShape { AtLeast: var least, Item: var item } => depth > Deepest
                ? Gen.Const("[]")
                : Value(item, depth + 1).Array[least, Math.Max(least, 2)].Select(v => $"[{string.Join(", ", v)}]"),
            NamedShape named => Value(named.Item, depth + 1)
                .Select(v => named.Named == "parameter" ? $"{{ w: 54, v: {v} }}" : $"{{ body: {v} }}"),
            RecordShape record => depth > Deepest ? Gen.Const("{}") : Word(record, depth),
            _ => throw new InvalidOperationException(),
        };

    private static Gen<string> Word(RecordShape record, int depth) =>
        record
            .Fields.Select(f =>
                Gen.Select(Gen.Int[0, 3], Gen.Int[0, 40])
                    .SelectMany(
                        (there, slip) =>
                            there == 0 || f.Required || f.Key == "parameters"
                                ? Value(f.Shape, depth + 1).Select(v => $"{(slip == 0 ? f.Key + "s" : f.Key)}: {v}")
                                : Gen.Const("")
                    )
            )
            .Aggregate(
                Gen.Const(""),
                (all, field) =>
                    Gen.Select(
                        all,
                        field,
                        (a, f) =>
                            f.Length == 0 ? a
                            : a.Length == 0 ? f
                            : $"{a}, {f}"
                    )
            )
            .Select(fields => $"{{ {fields} }}");
}
