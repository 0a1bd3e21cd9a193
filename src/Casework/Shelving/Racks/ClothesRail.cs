using Dryfit.Casework.Building;
using Dryfit.Casework.Carcases;
using Dryfit.Casework.Joinery;
using Dryfit.Findings;
using Dryfit.Measure;
using Dryfit.Parameters;
using Dryfit.Recipe;

namespace Dryfit.Casework.Shelving.Racks;

/// <summary><c>clothes rail:</c> a tube or pole from upright to upright that hangers hang on: bought and cut to length.</summary>
internal static class ClothesRail
{
    public static RecordShape Word { get; } =
        new(
            "clothes rail",
            "A rail for hangers from upright to upright, in sockets. Clothes on hangers want some 22 in (560 mm) of clear depth; less turns the hangers.",
            "clothes rail: { down: 2 1/2 }\n",
            () =>
                [
                    new(
                        "down",
                        new LengthShape(LengthSign.AboveZero),
                        "From what is above to the middle of the rail.",
                        Default: "the shop's room to lift a hanger"
                    ),
                    new(
                        "from front",
                        new LengthShape(LengthSign.AboveZero),
                        "From the front of the inside to the middle of the rail.",
                        Default: "the middle of the depth"
                    ),
                    new(
                        "diameter",
                        new LengthShape(LengthSign.AboveZero),
                        "Diameter of the rail.",
                        Default: "the shop's clothes rail"
                    ),
                ]
        );

    public static ClothesRailPlan? Read(Fields owner) =>
        owner.Has("clothes rail")
            ? new ClothesRailPlan(
                owner.Map("clothes rail")?.LengthOrNull("down"),
                owner.Map("clothes rail")?.LengthOrNull("from front"),
                owner.Map("clothes rail")?.LengthOrNull("diameter"),
                owner.PlaceOf("clothes rail")
            )
            : null;

    public static void Make(PieceBuilder piece, Cell bay, ClothesRailPlan plan)
    {
        var diameter = plan.Diameter ?? piece.Shop.Length(RackRules.PoleDiameter, "diameter");
        var down = plan.Down ?? piece.Shop.Length(RackRules.PoleDown, "down");
        var inside = bay.Inside;
        var fromFront = plan.FromFront?.Length ?? (inside.Depth / 2);
        var radius = diameter.Length / 2;
        if (down.Length < radius || down.Length + radius > inside.Height)
            throw Refused(plan, "The rail for clothes does not fit into the height of its bay.", "less room above it");
        if (fromFront < radius || fromFront + radius > inside.Depth)
            throw Refused(
                plan,
                "The rail for clothes stands out of its bay.",
                "a place between the front and the back"
            );
        var format = LengthFormat.For(piece.Scope.Unit);
        var at = new Point(inside.Min.X, inside.Min.Y + fromFront, inside.Max.Z - down.Length);
        foreach (var (upright, into) in PinRows.Uprights(bay))
            upright.RequireWood(
                Dowels.HoleBox(at.With(Axis.X, inside.Side(into)), into, diameter.Length, radius),
                "socket"
            );
        piece.FitBars(
            $"clothes rail {format.WriteWithUnit(diameter.Length)}, {format.WriteWithUnit(inside.Width)} long less the floors of its sockets",
            at,
            [
                new Extent(
                    new(inside.Min.X, at.Y - radius, at.Z - radius),
                    new(inside.Max.X, at.Y + radius, at.Z + radius)
                ),
            ],
            bay.InsideLeft,
            bay.InsideRight
        );
        piece.Fit("clothes rail socket", at, 1, bay.InsideLeft);
        piece.Fit("clothes rail socket", at.With(Axis.X, inside.Max.X), 1, bay.InsideRight);
        var supports = (int)(inside.Width / piece.Shop.Length(RackRules.PoleSpan).Length).Ceiling() - 1;
        if (supports > 0)
            piece.Fit(
                "clothes rail support",
                at.With(Axis.X, inside.Min.X + (inside.Width / 2)),
                supports,
                bay.Ceiling[0]
            );
    }

    private static CannotBuildException Refused(ClothesRailPlan plan, string message, string wanted) =>
        new(new InputError(message, plan.Place, wanted));
}

/// <summary>A rail for clothes as the recipe wants it; null where the house's rules hold.</summary>
internal sealed record ClothesRailPlan(Figure? Down, Figure? FromFront, Figure? Diameter, SourcePlace? Place);
