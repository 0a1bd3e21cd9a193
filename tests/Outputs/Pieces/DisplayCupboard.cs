using Dryfit.Casework;
using Dryfit.Measure;

namespace Dryfit.Outputs.Tests.Pieces;

/// <summary>
/// A stepped display cupboard in inches, face frames and inset fronts, put together board by board: four drawers beside a
/// framed pair below; a glazed pair between open bays above. Gaps around fronts are 3/32 in.
/// </summary>
internal sealed class DisplayCupboard
{
    private static readonly Rational Gap = new(3, 32);

    private readonly Sketch _sketch = new("Clay studio display cupboard") { Format = LengthFormat.Inches };

    /// <param name="missing">By how many inches the left upper door is too narrow on its latch side.</param>
    public static Sketch Build(Rational missing) => new DisplayCupboard().Put(missing);

    private Sketch Put(Rational missing)
    {
        _sketch.Group("base", GroupKind.Carcase).Group("upper", GroupKind.Carcase).Group("top", GroupKind.Top);
        _sketch.Group("stand", GroupKind.Stand);
        PutBase();
        Board("top/board", Role.Top, (R(-3, 4), R(-3, 4), 33), (R(219, 4), 19, 34), "top");
        PutUpper(missing);
        return _sketch;
    }

    private void PutBase()
    {
        foreach (var (name, x) in ((string, Rational)[])[("left", 0), ("right", R(207, 4))])
        {
            Board($"stand/{name}-front-leg", Role.Leg, (x, 0, 0), (x + R(9, 4), R(9, 4), 6), "stand");
            Board($"stand/{name}-back-leg", Role.Leg, (x, R(67, 4), 0), (x + R(9, 4), 19, 6), "stand");
        }
        Board("stand/front-rail", Role.StandRail, (R(9, 4), R(1, 2), 3), (R(207, 4), R(5, 4), 6), "stand");
        Board("base/left-side", Role.Side, (0, R(3, 4), 6), (R(3, 4), 19, 33), "base");
        Board("base/right-side", Role.Side, (R(213, 4), R(3, 4), 6), (54, 19, 33), "base");
        Board("base/back", Role.Back, (R(3, 4), R(73, 4), 6), (R(213, 4), 19, 33), "base");
        Frame("base", 0, 54, 6, 33, 0, R(7, 4), R(3, 2));
        // The drawers' bay is 16 wide, the doors' what is left beside a mullion of 1 3/4.
        var (left, mullion, right) = (R(7, 4), R(71, 4), R(209, 4));
        var (bottom, top) = (R(15, 2), R(63, 2));
        Board("base/mullion", Role.FrameMullion, (mullion, 0, bottom), (mullion + R(7, 4), R(3, 4), top), "base");
        var rails = R(1, 1);
        var height = (top - bottom - (3 * rails)) / 4;
        for (var i = 0; i < 4; i++)
        {
            var z = bottom + (i * (height + rails));
            if (i > 0)
                Board($"base/drawer-rail-{i}", Role.FrameRail, (left, 0, z - rails), (mullion, R(3, 4), z), "base");
            var id = $"base/drawer-{i + 1}";
            _sketch.Group(id, GroupKind.Drawer, $"drawer {i + 1}", "base");
            Board(
                $"{id}/front",
                Role.DrawerFront,
                (left + Gap, 0, z + Gap),
                (mullion - Gap, R(3, 4), z + height - Gap),
                id
            );
            Open(id, (left, 0, z), (mullion, 18, z + height));
            _sketch.Front(id, id, FrontMotion.SlidesOut, [$"{id}/front"]);
        }
        var doors = mullion + R(7, 4);
        Pair("base", doors, right, bottom, top, 0, glazed: false, 0);
    }

    private void PutUpper(Rational missing)
    {
        var (left, right, bottom, top) = (R(3, 4), R(213, 4), (Rational)34, (Rational)74);
        var front = R(29, 4);
        Board("upper/left-side", Role.Side, (left, front + R(3, 4), bottom), (left + R(3, 4), 19, top), "upper");
        Board("upper/right-side", Role.Side, (right - R(3, 4), front + R(3, 4), bottom), (right, 19, top), "upper");
        Board("upper/back", Role.Back, (left + R(3, 4), R(75, 4), bottom), (right - R(3, 4), 19, top), "upper");
        Frame("upper", left, right, bottom, top, front, R(7, 4), R(2, 1));
        var (inLeft, inRight) = (left + R(7, 4), right - R(7, 4));
        var (a, b) = (inLeft + 11, inRight - 11);
        foreach (var (name, x) in ((string, Rational)[])[("left", a), ("right", b - R(3, 2))])
        {
            Board(
                $"upper/{name}-mullion",
                Role.FrameMullion,
                (x, front, bottom + 2),
                (x + R(3, 2), front + R(3, 4), top - 2),
                "upper"
            );
            Board(
                $"upper/{name}-partition",
                Role.Partition,
                (x + R(3, 8), front + R(3, 4), bottom + 2),
                (x + R(9, 8), R(75, 4), top - 2),
                "upper"
            );
        }
        for (var i = 1; i <= 2; i++)
        {
            var z = bottom + 2 + (i * 12);
            Board(
                $"upper/shelf-{i}",
                Role.Shelf,
                (left + R(3, 4), front + R(3, 2), z),
                (right - R(3, 4), R(75, 4), z + R(3, 4)),
                "upper"
            );
        }
        Pair("upper", a + R(3, 2), b - R(3, 2), bottom + 2, top - 2, front, glazed: true, missing);
        Board("upper/cap", Role.Top, (0, front - R(3, 4), top), (54, 19, top + R(3, 4)), "upper");
    }

    private void Frame(
        string group,
        Rational x0,
        Rational x1,
        Rational z0,
        Rational z1,
        Rational y,
        Rational stile,
        Rational rail
    )
    {
        var back = y + R(3, 4);
        Board($"{group}/left-stile", Role.FrameStile, (x0, y, z0), (x0 + stile, back, z1), group);
        Board($"{group}/right-stile", Role.FrameStile, (x1 - stile, y, z0), (x1, back, z1), group);
        Board($"{group}/bottom-rail", Role.FrameRail, (x0 + stile, y, z0), (x1 - stile, back, z0 + rail), group);
        Board($"{group}/top-rail", Role.FrameRail, (x0 + stile, y, z1 - rail), (x1 - stile, back, z1), group);
    }

    private void Pair(
        string carcase,
        Rational x0,
        Rational x1,
        Rational z0,
        Rational z1,
        Rational y,
        bool glazed,
        Rational missing
    )
    {
        var opening = $"{carcase}/pair";
        var middle = (x0 + x1) / 2;
        Open(opening, (x0, y, z0), (x1, 18, z1));
        var (left, right) = ($"{carcase}/left-door", $"{carcase}/right-door");
        Door(
            left,
            $"{carcase} left door",
            x0 + Gap,
            middle - (Gap / 2) - missing,
            z0 + Gap,
            z1 - Gap,
            y,
            glazed,
            carcase
        );
        Door(right, $"{carcase} right door", middle + (Gap / 2), x1 - Gap, z0 + Gap, z1 - Gap, y, glazed, carcase);
        var gap = Length.FromInches(Gap);
        _sketch.Front(
            left,
            opening,
            FrontMotion.TurnsOnLeftEdge,
            Face(left),
            Hang.Inset,
            new FrontNeighbour(right, Direction.Right, gap)
        );
        _sketch.Front(
            right,
            opening,
            FrontMotion.TurnsOnRightEdge,
            Face(right),
            Hang.Inset,
            new FrontNeighbour(left, Direction.Left, gap)
        );
    }

    private void Door(
        string id,
        string name,
        Rational x0,
        Rational x1,
        Rational z0,
        Rational z1,
        Rational y,
        bool glazed,
        string parent
    )
    {
        _sketch.Group(id, GroupKind.Door, name, parent);
        var (stile, back) = (R(2, 1), y + R(3, 4));
        Board($"{id}/left-stile", Role.DoorStile, (x0, y, z0), (x0 + stile, back, z1), id);
        Board($"{id}/right-stile", Role.DoorStile, (x1 - stile, y, z0), (x1, back, z1), id);
        Board($"{id}/bottom-rail", Role.DoorRail, (x0 + stile, y, z0), (x1 - stile, back, z0 + stile), id);
        Board($"{id}/top-rail", Role.DoorRail, (x0 + stile, y, z1 - stile), (x1 - stile, back, z1), id);
        _sketch.Board(
            $"{id}/panel",
            glazed ? Role.Glass : Role.DoorPanel,
            Mm((x0 + stile, y + R(3, 8), z0 + stile)),
            Mm((x1 - stile, y + R(1, 2), z1 - stile)),
            glazed ? Sketch.Glass : Sketch.Maple,
            group: id
        );
    }

    private static string[] Face(string id) =>
        [$"{id}/left-stile", $"{id}/right-stile", $"{id}/bottom-rail", $"{id}/top-rail"];

    private void Board(
        string id,
        Role role,
        (Rational, Rational, Rational) min,
        (Rational, Rational, Rational) max,
        string group
    ) => _sketch.Board(id, role, Mm(min), Mm(max), group: group);

    private void Open(string id, (Rational, Rational, Rational) min, (Rational, Rational, Rational) max) =>
        _sketch.Opening(id, Mm(min), Mm(max));

    private static (Rational, Rational, Rational) Mm((Rational X, Rational Y, Rational Z) inches)
    {
        var mm = new Rational(254, 10);
        return (inches.X * mm, inches.Y * mm, inches.Z * mm);
    }

    private static Rational R(int numerator, int denominator) => new(numerator, denominator);
}
