using Dryfit.Casework.Feet;
using Dryfit.Measure;
using Dryfit.Parameters;
using Dryfit.Recipe;

namespace Dryfit.Casework.Words;

/// <summary><c>arch:</c> aprons and plinths hollowed along their lower edge.</summary>
internal static class ArchWord
{
    public static RecordShape Word { get; } =
        new(
            "arch",
            "A part of a circle sawn out of the lower edge of rails or plinth boards, told by how high its middle rises.",
            "arch: { rise: 1 1/2, flat: 3, along: front and ends }",
            () =>
                [
                    new("rise", new LengthShape(LengthSign.AboveZero), "How high its middle rises.", Required: true),
                    new(
                        "flat",
                        new LengthShape(),
                        "What is left straight at each end: the feet of a plinth.",
                        Default: "nothing of rails, the height of a plinth"
                    ),
                    new(
                        "along",
                        new ChoiceShape("front", "front and ends", "all round"),
                        "Which boards get it.",
                        Default: "front"
                    ),
                ]
        );

    public static EitherShape Shape { get; } = new(new LengthShape(LengthSign.AboveZero), Word);

    /// <param name="usual">What is left straight at the ends where nothing is said.</param>
    public static RailArch? Read(Fields stand, Figure? usual)
    {
        if (!stand.Has("arch"))
            return null;
        var flat = usual ?? Figure.Given("flat", Length.Zero, new TradeOrigin("rails are hollowed from leg to leg"));
        if (stand.Map("arch") is not { } fields)
            return new RailArch(stand.Length("arch", "rise"), flat, Ends: false, Rear: false, stand.PlaceOf("arch"));
        var along = fields.Text("along") ?? "front";
        return new RailArch(
            fields.Length("rise"),
            fields.LengthOrNull("flat") ?? flat,
            along != "front",
            along == "all round",
            stand.PlaceOf("arch")
        );
    }
}
