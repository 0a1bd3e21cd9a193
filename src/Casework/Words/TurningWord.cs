using Dryfit.Casework.Building;
using Dryfit.Casework.Feet;
using Dryfit.Measure;
using Dryfit.Parameters;
using Dryfit.Recipe;

namespace Dryfit.Casework.Words;

/// <summary><c>turning:</c> legs turned from square blanks.</summary>
internal static class TurningWord
{
    public static RecordShape Stretch { get; } =
        new(
            "stretch",
            "A stretch of a turned leg.",
            "{ length: 1/2, diameter: 1 }",
            () =>
                [
                    new("length", new LengthShape(LengthSign.AboveZero), "Along the leg.", Required: true),
                    new("diameter", new LengthShape(LengthSign.AboveZero), "Its largest one.", Required: true),
                ]
        );

    public static RecordShape Word { get; } =
        new(
            "turning",
            "Legs turned from square blanks, each of one piece, below a pommel that stays square. Each stretch is drawn and weighed as a true round of its largest diameter; the beads and curves within it are the turner's own.",
            "turning: { pommel: 1, stretches: [ { length: 1/2, diameter: 1 1/4 } ], diameter: 1 1/2 }",
            () =>
                [
                    new("diameter", new LengthShape(LengthSign.AboveZero), "Down to the floor.", Required: true),
                    new(
                        "pommel",
                        new LengthShape(),
                        "What stays square below the rails.",
                        Default: "the shop's pommel"
                    ),
                    new(
                        "stretches",
                        new ListShape(Stretch, 1, 30),
                        "Stretches of other diameters, from the pommel down.",
                        Default: "none"
                    ),
                ]
        );

    public static TurningPlan? Read(Fields legs, PieceBuilder piece)
    {
        if (legs.Map("turning") is not { } fields)
            return null;
        return new TurningPlan(
            fields.LengthOrNull("pommel") ?? piece.Shop.Length(StandRules.Pommel, "pommel"),
            [
                .. fields
                    .List("stretches")
                    .OfType<Mapping>()
                    .Select(stretch => new Fields(stretch, piece.Scope))
                    .Select(stretch => (stretch.Length("length"), stretch.Length("diameter"))),
            ],
            fields.Length("diameter"),
            LengthFormat.For(piece.Scope.Unit),
            fields.Place
        );
    }
}
