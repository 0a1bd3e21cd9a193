using Dryfit.Casework.Building;
using Dryfit.Findings;
using Dryfit.Parameters;
using Dryfit.Recipe;

namespace Dryfit.Casework.Lights;

/// <summary><c>lights:</c> low-voltage strips and pucks let into the panels of a bay, with the way of their cables.</summary>
internal static class LightsWord
{
    public static RecordShape Word { get; } =
        new(
            "lights",
            "Low-voltage lights of a bay: strips in grooves and pucks in recesses on the undersides of panels, each with a groove for its cable to the back and a hole to leave by. What is wired to the mains is work for licensed people and by local code; drivers want the air and the reach that their makers ask for. Shelves of glass, or set back behind the strip, let the light down.",
            "lights: { strips: above and shelves, driver: in the bay }\n",
            () =>
                [
                    new(
                        "strips",
                        new ChoiceShape("above", "shelves", "above and shelves"),
                        "Where strips lie: under the panel above the bay, under its fixed shelves, or both.",
                        Default: "none"
                    ),
                    new(
                        "pucks",
                        new CountShape(1, 20),
                        "How many pucks in the panel above, spread evenly.",
                        Default: "none"
                    ),
                    new(
                        "from front",
                        new LengthShape(LengthSign.AboveZero),
                        "From the front of the inside to the front of a strip or puck.",
                        Default: "the shop's lights"
                    ),
                    new(
                        "cables",
                        new ChoiceShape("left", "right"),
                        "The end at which the cables go back.",
                        Default: "right"
                    ),
                    new(
                        "driver",
                        new ChoiceShape("apart", "on top", "in the bay"),
                        "Where the driver is: somewhere else, on the panel above, or on the floor of the bay with holes in the back to air it.",
                        Default: "apart: only the cables' way is made"
                    ),
                ]
        );

    public static LightsPlan? Read(Fields owner)
    {
        if (owner.Map("lights") is not { } fields)
            return null;
        var plan = new LightsPlan(
            fields.Text("strips") switch
            {
                "above" => StripPlace.Above,
                "shelves" => StripPlace.Shelves,
                "above and shelves" => StripPlace.AboveAndShelves,
                _ => StripPlace.Nothing,
            },
            fields.Has("pucks") ? fields.Count("pucks") : 0,
            fields.LengthOrNull("from front"),
            fields.Text("cables") == "left" ? Direction.Left : Direction.Right,
            fields.Text("driver") switch
            {
                "on top" => DriverPlace.OnTop,
                "in the bay" => DriverPlace.InTheBay,
                _ => DriverPlace.Apart,
            },
            fields.Place
        );
        if (plan.Strips == StripPlace.Nothing && plan.Pucks == 0)
            throw new CannotBuildException(
                new InputError("Which lights is missing.", fields.Place, "strips: above, or pucks: 3")
            );
        return plan;
    }
}
