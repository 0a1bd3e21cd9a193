using Dryfit.Casework;
using Dryfit.Measure;

namespace Dryfit.Slips;

/// <summary>Whole doors, drawers and drawer boxes that were made by a wrong sum.</summary>
internal static class UnitSlips
{
    public static IEnumerable<SlipKind> Kinds { get; } =
    [
        OfFronts("front made too wide or narrow", AnyWidth),
        OfFronts("front made too high or low", AnyHeight),
        OfFronts("gap taken twice", GapTwice),
        OfFronts("overlay taken once", OverlayOnce),
        OfFronts("both rails of a door wrong", RailsOfADoor),
        OfFronts("stile taken once", StileOnce),
        OfDrawers("drawer box made too wide or narrow", [Role.DrawerBoxFront, Role.DrawerBack], PartSize.Length),
        OfDrawers("drawer box made too deep or short", [Role.DrawerSide], PartSize.Length),
        OfDrawers(
            "drawer box made too high or low",
            [Role.DrawerSide, Role.DrawerBoxFront, Role.DrawerBack],
            PartSize.Width
        ),
    ];

    private static SlipKind OfFronts(string name, Func<SoundPiece, Front, Random, (string, RecipeEdit)?> make)
    {
        return new(name, piece => piece.Fronts.Count > 0, Make);

        Slip? Make(SoundPiece sound, Random chance)
        {
            var front = sound.Piece.Fronts[chance.Next(sound.Piece.Fronts.Count)];
            return make(sound, front, chance) is var (mistake, edit)
                ? new Slip(sound, name, mistake, edit, [.. Members(sound, front).Select(p => p.Id)])
                : null;
        }
    }

    private static SlipKind OfDrawers(string name, Role[] roles, PartSize size)
    {
        return new(name, piece => piece.Fronts.Any(front => front.Drawer is not null), Make);

        Slip? Make(SoundPiece sound, Random chance)
        {
            var fronts = sound.Piece.Fronts.Where(f => f.Drawer is not null).ToList();
            var box = fronts[chance.Next(fronts.Count)].Drawer!.Box.ToHashSet(StringComparer.Ordinal);
            var parts = sound
                .Piece.Parts.Where(p => box.Contains(p.Id) && roles.Contains(p.Role) && !p.IsKept)
                .ToList();
            if (parts.Count == 0 || Mistakes.OfASize(size.Of(parts[0]), sound.IsInInches, chance) is not { } wrong)
                return null;
            // All of them by the same wrong sum.
            var by = wrong.Cut - size.Of(parts[0]);
            if (parts.Any(p => (size.Of(p) + by).Sign <= 0))
                return null;
            var lines = parts.Select(p =>
                $"\"{p.Name}\": {{ {size.Key}: {RecipeEdit.Typed(size.Of(p) + by, sound.IsInInches)} }}"
            );
            return new Slip(sound, name, wrong.Mistake, RecipeEdit.Under("as cut", sound, [.. lines]), [.. box]);
        }
    }

    private static (string, RecipeEdit)? AnyWidth(SoundPiece sound, Front front, Random chance) =>
        Size(sound, front, "width") is { } right && Mistakes.OfASize(right, sound.IsInInches, chance) is { } wrong
            ? (wrong.Mistake, Unit(sound, front, "width", wrong.Cut))
            : null;

    private static (string, RecipeEdit)? AnyHeight(SoundPiece sound, Front front, Random chance) =>
        Size(sound, front, "height") is { } right && Mistakes.OfASize(right, sound.IsInInches, chance) is { } wrong
            ? (wrong.Mistake, Unit(sound, front, "height", wrong.Cut))
            : null;

    private static (string, RecipeEdit)? GapTwice(SoundPiece sound, Front front, Random chance)
    {
        var gaps = new[] { front.Wanted.Left, front.Wanted.Right }.OfType<Length>().ToList();
        return front.Hang == Hang.Inset && gaps.Count > 0 && Size(sound, front, "width") is { } right
            ? ("gap taken twice", Unit(sound, front, "width", right - gaps[0]))
            : null;
    }

    private static (string, RecipeEdit)? OverlayOnce(SoundPiece sound, Front front, Random chance)
    {
        var overlays = new[] { front.Wanted.Left, front.Wanted.Right }.OfType<Length>().ToList();
        return front.Hang == Hang.Overlay && overlays.Count == 2 && Size(sound, front, "width") is { } right
            ? ("overlay taken once", Unit(sound, front, "width", right - overlays[0]))
            : null;
    }

    private static (string, RecipeEdit)? RailsOfADoor(SoundPiece sound, Front front, Random chance) =>
        Rails(sound, front) is [var first, ..] rails
        && Mistakes.OfASize(first.Length.Length, sound.IsInInches, chance) is { } wrong
            ? (wrong.Mistake, Parts(sound, rails, wrong.Cut))
            : null;

    private static (string, RecipeEdit)? StileOnce(SoundPiece sound, Front front, Random chance) =>
        Rails(sound, front) is [var first, ..] rails
        && Members(sound, front).FirstOrDefault(p => p.Role == Role.DoorStile) is { } stile
            ? ("stile taken once", Parts(sound, rails, first.Length.Length + stile.Width.Length))
            : null;

    /// <summary>All that run from stile to stile, if they are equally long.</summary>
    private static List<Part>? Rails(SoundPiece sound, Front front)
    {
        var rails = Members(sound, front).Where(p => p.Role == Role.DoorRail).ToList();
        return rails.Count > 0 && rails.TrueForAll(p => p.Length.Length == rails[0].Length.Length) ? rails : null;
    }

    private static RecipeEdit Parts(SoundPiece sound, List<Part> parts, Length cut) =>
        RecipeEdit.Under(
            "as cut",
            sound,
            [.. parts.Select(p => $"\"{p.Name}\": {{ length: {RecipeEdit.Typed(cut, sound.IsInInches)} }}")]
        );

    private static RecipeEdit Unit(SoundPiece sound, Front front, string size, Length cut) =>
        RecipeEdit.Under(
            "as cut",
            sound,
            $"\"{sound.Piece.Groups.First(g => g.Id == front.Group).Name}\": {{ {size}: {RecipeEdit.Typed(cut, sound.IsInInches)} }}"
        );

    private static Length? Size(SoundPiece sound, Front front, string name) =>
        sound
            .Piece.Groups.First(g => g.Id == front.Group)
            .Sizes.FirstOrDefault(s => s.Name.EndsWith(name, StringComparison.Ordinal))
            ?.Figure.Length;

    private static IEnumerable<Part> Members(SoundPiece sound, Front front) =>
        sound.Piece.Parts.Where(p => p.Group == front.Group);
}
