using Dryfit.Casework.Building;
using Dryfit.Findings;
using Dryfit.Parameters;
using Dryfit.Recipe;

namespace Dryfit.Casework.Faces;

/// <summary><c>show faces:</c> which faces of a carcase's panels are the good ones.</summary>
internal static class ShowFacesWord
{
    private static readonly ChoiceShape Ways = new("outside", "inside");

    public static RecordShape Word { get; } =
        new(
            "show faces",
            "Which faces of the panels are seen, and get the good face of their stuff: cuts are told from it in parts list and cut list. No size depends on it. `inside` alone, or `outside`, says it of all sides of the box.",
            "show faces: { sides: inside, bottom: outside }\n",
            () =>
                [
                    new("sides", Ways, "Both sides.", Default: "outside"),
                    new("left side", Ways, "The left one.", Default: "as sides"),
                    new("right side", Ways, "The right one.", Default: "as sides"),
                    new("bottom", Ways, "The bottom; of what hangs high the outside is seen.", Default: "inside"),
                    new("top", Ways, "The panel that closes the box above.", Default: "outside"),
                    new("back", Ways, "The back; of what stands free the outside is seen too.", Default: "inside"),
                    new("partitions", new ChoiceShape("left", "right"), "Upright partitions.", Default: "left"),
                    new("shelves", new ChoiceShape("above", "below"), "Shelves.", Default: "above"),
                ]
        );

    public static EitherShape Shape { get; } = new(Ways, Word);

    /// <summary>Turns the panels of a carcase so that they show the faces that are asked for.</summary>
    public static void Set(PieceBuilder piece, GroupDraft group, Fields carcase, Extent envelope)
    {
        if (!carcase.Has("show faces"))
            return;
        var all = carcase.Map("show faces") is null ? carcase.Text("show faces") : null;
        var met = new HashSet<string>(StringComparer.Ordinal);
        foreach (var part in piece.Parts.Where(part => part.Group == group && !part.IsKept).ToList())
        {
            if (KeyOf(part) is not { } key)
                continue;
            met.Add(key);
            if (Wanted(part, key) is { } shows && shows != part.Place.Lie.Shows)
                TurnedOver.Turn(part);
        }
        if (carcase.Map("show faces") is { } fields)
            RefuseUnmet(fields, met, group);

        Direction? Wanted(PartDraft part, string key)
        {
            var said =
                all
                ?? carcase.Map("show faces")!.Text(key)
                ?? (key.EndsWith(" side", StringComparison.Ordinal) ? carcase.Map("show faces")!.Text("sides") : null);
            return (said, key) switch
            {
                (null, _) or (_, "partitions" or "shelves") when all is not null || said is null => null,
                ("left", _) => Direction.Left,
                ("right", _) => Direction.Right,
                ("above", _) => Direction.Up,
                ("below", _) => Direction.Down,
                ("outside", _) => Outwards(part),
                _ => Outwards(part).Opposite(),
            };
        }

        Direction Outwards(PartDraft part)
        {
            var axis = part.Place.Lie.Shows.Axis();
            var beyond = part.Reckoned.Min[axis] + part.Reckoned.Max[axis] - envelope.Min[axis] - envelope.Max[axis];
            return Directions.Along(axis, beyond.Sign < 0 ? -1 : 1);
        }

        string? KeyOf(PartDraft part) =>
            part.Role switch
            {
                Role.Side when part.Place.Lie.Shows.Axis() == Axis.X => Outwards(part) == Direction.Left
                    ? "left side"
                    : "right side",
                Role.Side => "sides",
                Role.Bottom => "bottom",
                Role.Top when part.Name == group.Full("top panel") => "top",
                Role.Back => "back",
                Role.Partition => "partitions",
                Role.Shelf => "shelves",
                _ => null,
            };
    }

    private static void RefuseUnmet(Fields fields, HashSet<string> met, GroupDraft group)
    {
        foreach (var field in Word.Fields.Select(field => field.Key).Where(fields.Has))
        {
            if (field != "sides" && !met.Contains(field))
                throw new CannotBuildException(
                    new InputError(
                        $"The {group.Name} has no {field} that could show a face.",
                        fields.PlaceOf(field),
                        met.Count == 0 ? "no show faces:" : $"{string.Join(", ", met.Order(StringComparer.Ordinal))}"
                    )
                );
        }
    }
}
