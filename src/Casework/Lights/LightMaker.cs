using Dryfit.Casework.Building;
using Dryfit.Casework.Carcases;
using Dryfit.Casework.Fronts;
using Dryfit.Findings;
using Dryfit.Measure;

namespace Dryfit.Casework.Lights;

/// <summary>
/// Lets lights into the panels of a bay: a groove or recess from below, a groove for the cable from there to the back edge
/// of the clear space, a hole through the back or up through the panel.
/// </summary>
internal sealed class LightMaker(PieceBuilder piece, CarcasePlan plan, Box box, Cell bay, LightsPlan lights)
{
    /// <summary>What must be left of a panel over a recess: common practice.</summary>
    private static readonly Length Skin = Length.FromMillimetres(3);

    private readonly Length _frontY =
        bay.Inside.Min.Y + (lights.FromFront ?? piece.Shop.Length(LightRules.FromFront)).Length;
    private readonly Length _cable = piece.Shop.Length(LightRules.CableWidth).Length;
    private readonly Length _ends = piece.Shop.Length(LightRules.StripEnds).Length;
    private int _deciwatts;

    /// <param name="shelves">The fixed shelves of the bay.</param>
    public void Make(IReadOnlyList<PartDraft> shelves)
    {
        if (lights.Strips is StripPlace.Above or StripPlace.AboveAndShelves)
            Strip(Above());
        if (lights.Strips is StripPlace.Shelves or StripPlace.AboveAndShelves)
        {
            if (shelves.Count == 0)
                throw Refused(
                    "There is no fixed shelf for a strip: a loose one would drag its cable along.",
                    "shelves: { fixed: 1 }, or strips: above"
                );
            foreach (var shelf in shelves)
                Strip(shelf);
        }
        if (lights.Pucks > 0)
            Pucks(Above());
        Driver();
    }

    private PartDraft Above() =>
        bay.Ceiling is [var panel]
            ? panel
            : throw Refused("Lights above want a panel there, and there are stretchers.", "closed by: panel");

    private void Strip(PartDraft panel)
    {
        var width = piece.Shop.Length(LightRules.StripWidth).Length;
        var depth = piece.Shop.Length(LightRules.StripDepth).Length;
        var length = bay.Inside.Width - (_ends * 2);
        var underside = panel.Reckoned.Min.Z;
        RefuseThin(panel, depth);
        if (length < width || _frontY + width + _cable > bay.Inside.Max.Y)
            throw Refused(
                "There is no room for a strip in this bay.",
                "a wider or deeper bay, or a strip further in front"
            );
        var fitting = piece.NextFittingId;
        var strip = new Extent(
            new(bay.Inside.Min.X + _ends, _frontY, underside),
            new(bay.Inside.Max.X - _ends, _frontY + width, underside + depth)
        );
        panel.CutAway(CutKind.Groove, strip, fitting);
        piece.FitElectric($"light strip, {Write(length)} long", new(strip.Min.X, _frontY, underside), 1, panel);
        _deciwatts += (int)(length.Millimetres * piece.Shop.Count(LightRules.WattsPerMetre) / 100).Ceiling();
        // The cable leaves at the very end of the strip, where the profile has its plug.
        var x = lights.CableSide == Direction.Right ? strip.Max.X - _cable : strip.Min.X;
        CableBack(panel, x, strip.Max.Y, fitting);
    }

    private void Pucks(PartDraft panel)
    {
        var diameter = piece.Shop.Length(LightRules.PuckDiameter).Length;
        var depth = piece.Shop.Length(LightRules.PuckDepth).Length;
        RefuseThin(panel, depth);
        if (lights.Strips is StripPlace.Above or StripPlace.AboveAndShelves)
            throw Refused("Strip and pucks do not go into one panel.", "strips: shelves, or no pucks");
        var pitch = bay.Inside.Width / lights.Pucks;
        if (pitch < diameter + (_ends * 2) || _frontY + diameter + _cable > bay.Inside.Max.Y)
            throw Refused($"There is no room for {lights.Pucks} pucks in this bay.", "fewer pucks");
        var fitting = piece.NextFittingId;
        var y = _frontY + (diameter / 2);
        var underside = panel.Reckoned.Min.Z;
        var centres = Enumerable
            .Range(0, lights.Pucks)
            .Select(n => bay.Inside.Min.X + (pitch / 2) + (pitch * n))
            .ToList();
        foreach (var x in centres)
            panel.Bore(CutKind.Bore, new(x, y, underside), Direction.Up, diameter, depth, fitting);
        piece.FitElectric($"puck light {Write(diameter)}", new(centres[0], y, underside), lights.Pucks, panel);
        _deciwatts += lights.Pucks * piece.Shop.Count(LightRules.WattsPerPuck) * 10;
        // One groove takes the cables of all: across behind the middles, then back at the end.
        var end = lights.CableSide == Direction.Right ? centres[^1] : centres[0];
        if (centres.Count > 1)
            panel.CutAway(
                CutKind.Groove,
                new(
                    new(centres[0], y - (_cable / 2), underside),
                    new(centres[^1], y + (_cable / 2), underside + _cable)
                ),
                fitting
            );
        CableBack(panel, end - (_cable / 2), y, fitting);
    }

    /// <summary>The groove from a light to the back of the clear space, and the hole by which the cable leaves it.</summary>
    /// <param name="x">The left wall of the groove.</param>
    private void CableBack(PartDraft panel, Length x, Length fromY, string fitting)
    {
        var underside = panel.Reckoned.Min.Z;
        var hole = piece.Shop.Length(LightRules.CableHole).Length;
        panel.CutAway(
            CutKind.Groove,
            new(new(x, fromY, underside), new(x + _cable, bay.Inside.Max.Y, underside + _cable)),
            fitting
        );
        var middle = x + (_cable / 2);
        var goesUp = lights.Driver == DriverPlace.OnTop && box.Closing.Contains(panel);
        if (goesUp)
            panel.Bore(
                CutKind.Bore,
                new(middle, bay.Inside.Max.Y - hole, underside),
                Direction.Up,
                hole,
                panel.Thickness.Length,
                fitting
            );
        else
            box.Back?.Bore(
                CutKind.Bore,
                new(middle, bay.Inside.Max.Y, underside - hole),
                Direction.Back,
                hole,
                box.Back.Thickness.Length,
                fitting
            );
    }

    private void Driver()
    {
        // A driver runs cool at four fifths of what it can give: common practice; sold in steps of 5 W.
        var watts = ((_deciwatts * 5) + 199) / 200 * 5;
        var called = $"driver for lights, {watts} W or more";
        if (lights.Driver == DriverPlace.OnTop)
        {
            if (plan.Top is not null || !box.Closing.Contains(bay.Ceiling[0]))
                throw Refused(
                    "Something lies on the panel above, where the driver should be.",
                    "driver: in the bay, or apart"
                );
            piece.FitElectric(
                called,
                new(bay.Inside.Min.X, bay.Inside.Max.Y, bay.Ceiling[0].Reckoned.Max.Z),
                1,
                bay.Ceiling[0]
            );
        }
        else if (lights.Driver == DriverPlace.InTheBay)
        {
            Vents();
            piece.FitElectric(called, new(bay.Inside.Min.X, bay.Inside.Max.Y, bay.Inside.Min.Z), 1, bay.Floor);
        }
        else
        {
            piece.FitElectric(called, new(bay.Inside.Min.X, bay.Inside.Max.Y, bay.Inside.Min.Z), 1, bay.InsideRight);
        }
    }

    /// <summary>Holes in the back that air a driver on the floor of the bay, at the end of the cables.</summary>
    private void Vents()
    {
        if (box.Back is null)
            return;
        var diameter = piece.Shop.Length(LightRules.VentHole).Length;
        var count = piece.Shop.Count(LightRules.VentHoles);
        var (pitch, z) = (diameter * 2, bay.Inside.Min.Z + (diameter * 2));
        if (pitch * count > bay.Inside.Width || diameter * 3 > bay.Inside.Height)
            throw Refused("There is no room in this bay to air a driver.", "driver: apart");
        var way = lights.CableSide.Sign();
        var fitting = piece.NextFittingId;
        for (var n = 0; n < count; n++)
        {
            var x = bay.Inside.Side(lights.CableSide) - ((diameter + (pitch * n)) * way);
            box.Back.Bore(
                CutKind.Bore,
                new(x, bay.Inside.Max.Y, z),
                Direction.Back,
                diameter,
                box.Back.Thickness.Length,
                fitting
            );
        }
    }

    private void RefuseThin(PartDraft panel, Length depth)
    {
        if (depth + Skin > panel.Thickness.Length)
            throw Refused(
                $"The {panel.Name} is too thin for the recess of a light, {NoRoom.Show(depth)} deep.",
                "a thicker panel, or shallower lights in the shop's rules"
            );
    }

    private string Write(Length length) => LengthFormat.For(piece.Scope.Unit).WriteWithUnit(length);

    private CannotBuildException Refused(string message, string wanted) =>
        new(new InputError(message, lights.Place, wanted));
}
