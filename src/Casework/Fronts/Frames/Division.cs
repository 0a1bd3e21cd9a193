using Dryfit.Casework.Building;
using Dryfit.Findings;
using Dryfit.Parameters;
using Dryfit.Recipe;

namespace Dryfit.Casework.Fronts.Frames;

/// <summary>What divides the inside of a framed or glazed door.</summary>
/// <param name="Rails">Rails between the top and the bottom one; null for none.</param>
/// <param name="Muntins">Uprights between the panels of a framed door; null for none.</param>
/// <param name="Bars">Glazing bars; null for a single sheet.</param>
internal sealed record Division(MiddleRails? Rails, Muntins? Muntins, GlazingBars? Bars)
{
    public static Division Read(PieceBuilder piece, Fields? said, DoorKind kind)
    {
        if (said is null)
            return new(null, null, null);
        Refuse(said, kind);
        return new(ReadRails(piece, said), ReadMuntins(piece, said), ReadBars(piece, said));
    }

    /// <summary>Reads the rails between the top and the bottom one.</summary>
    public static MiddleRails? ReadRails(PieceBuilder piece, Fields said)
    {
        if (!said.Has("middle rails"))
            return null;
        var keys = said.Map("middle rails");
        var at = keys?.List("at") ?? [];
        var width =
            keys?.LengthOrNull("width", "middle rail")
            ?? said.LengthOrNull("rails", "middle rail")
            ?? piece.Shop.Length(DoorRules.DoorRail, "middle rail");
        var place = said.PlaceOf("middle rails");
        if (keys is not null && keys.Has("equal") == keys.Has("at"))
            throw NoRoom.Of(
                "The middle rails are either so many at equal distances, or at heights.",
                place,
                "`equal: 1`, or `at:` with a height for each"
            );
        var count =
            keys is null ? said.Count("middle rails")
            : at.Count > 0 ? at.Count
            : keys.Count("equal");
        return count == 0
            ? null
            : new(
                count,
                width,
                [.. at.Cast<Scalar>().Select(h => said.Scope.Length(h, "height of the middle rail"))],
                place
            );
    }

    /// <summary>Reads the uprights between the panels.</summary>
    public static Muntins? ReadMuntins(PieceBuilder piece, Fields said)
    {
        if (!said.Has("muntins"))
            return null;
        var keys = said.Map("muntins");
        var count = keys is null ? said.Count("muntins") : keys.Count("count");
        return count == 0
            ? null
            : new(
                count,
                keys?.LengthOrNull("width", "muntin")
                    ?? said.LengthOrNull("stiles", "muntin")
                    ?? piece.Shop.Length(DoorRules.DoorStile, "muntin")
            );
    }

    private static GlazingBars? ReadBars(PieceBuilder piece, Fields said)
    {
        if (said.Map("bars") is not { } keys)
            return null;
        var (columns, rows) = (Math.Max(1, keys.Count("columns")), Math.Max(1, keys.Count("rows")));
        if (columns * rows == 1)
            throw NoRoom.Of(
                "Bars divide the glass, and one column of one row is undivided.",
                keys.Place,
                "`columns:` or `rows:` of two or more"
            );
        return new(
            columns,
            rows,
            keys.LengthOrNull("width", "bar") ?? piece.Shop.Length(DoorRules.BarWidth, "bar"),
            piece.Shop.Length(DoorRules.BarRabbet, "bar rabbet")
        );
    }

    private static void Refuse(Fields said, DoorKind kind)
    {
        if (kind == DoorKind.Slab)
        {
            foreach (var key in (ReadOnlySpan<string>)["middle rails", "muntins", "bars"])
            {
                if (said.Has(key))
                    throw NoRoom.Of($"A slab has no {key}.", said.PlaceOf(key), "`kind: framed` or `kind: glazed`");
            }
        }
        if (kind == DoorKind.Framed && said.Has("bars"))
            throw NoRoom.Of(
                "Bars divide glass, and this door has panels.",
                said.PlaceOf("bars"),
                "`muntins:` between panels, or `kind: glazed`"
            );
        if (kind == DoorKind.Glazed && said.Has("muntins"))
            throw NoRoom.Of(
                "Muntins stand between panels, and this door has glass.",
                said.PlaceOf("muntins"),
                "`bars:` in the glass, or `kind: framed`"
            );
    }
}

/// <summary>Rails between the top and the bottom rail of a door.</summary>
/// <param name="At">From the door's lower edge to the lower edge of each, from the lowest; empty where the heights between are equal.</param>
internal sealed record MiddleRails(int Count, Figure Width, IReadOnlyList<Figure> At, SourcePlace Place);

/// <summary>Uprights between the rails of a framed door, so many in each row of panels.</summary>
internal sealed record Muntins(int Count, Figure Width);

/// <summary>The bars of a barred door.</summary>
/// <param name="Rabbet">How deep each of their rabbets is, from the edge.</param>
internal sealed record GlazingBars(int Columns, int Rows, Figure Width, Figure Rabbet);
