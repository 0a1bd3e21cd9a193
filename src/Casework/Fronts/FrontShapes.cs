using Dryfit.Recipe;

namespace Dryfit.Casework.Fronts;

/// <summary>What doors and drawers have in common to say.</summary>
internal static class FrontShapes
{
    public static ChoiceShape Hangs { get; } = new("inset", "overlaid", "half overlaid", "rebated");

    public static Field Hang { get; } =
        new(
            "hang",
            Hangs,
            "In its opening, flush with the frame; in front of it; lapping over half of each upright at its sides, so that two fronts share it; or rebated, with its back in the opening and a lip that laps over.",
            Default: "as the carcase's fronts"
        );

    public static Field Gap { get; } =
        new(
            "gap",
            new LengthShape(),
            "Gap around an inset front, each side.",
            Default: "the shop's gap for inset fronts"
        );

    public static Field Overlay { get; } =
        new(
            "overlay",
            new EitherShape(
                new LengthShape(),
                new RecordShape(
                    "overlay",
                    "How far an overlaid front laps over the edges of its opening, side by side.",
                    "overlay: { left: 1/2, right: 1/4 }\n",
                    () => [Side("left"), Side("right"), Side("bottom"), Side("top")]
                )
            ),
            "How far an overlaid front laps over the edges of its opening: one length for all sides, or a length a side.",
            Default: "to the edge of the carcase less the shop's gap there; over a face frame by the shop's frame overlay"
        );

    public static Field Material(string of) =>
        new(
            "material",
            new NameShape("material"),
            $"Material of {of}.",
            Default: "the material called `fronts`, else the carcase's own"
        );

    public static Field Edging(string of) =>
        new(
            "edging",
            new EitherShape(new ChoiceShape("none"), new NameShape("material")),
            $"Material of the bands on all four edges of {of}, or none. The size stands for the front with its bands on.",
            Default: "for sheet goods the material called `edging`, if there is one; else none"
        );

    private static Field Side(string side) =>
        new(side, new LengthShape(), $"Overlay on the {side}.", Default: "as where no overlay is said");
}
