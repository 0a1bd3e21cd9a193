using Dryfit.Casework.Building;
using Dryfit.Casework.Shaping;
using Dryfit.Findings;
using Dryfit.Measure;
using Dryfit.Parameters;
using Dryfit.Recipe;

namespace Dryfit.Casework.Boards;

/// <summary>Cuts of a loose board that are not square: tapers, arches, sawn outlines.</summary>
internal sealed class BoardShaping(BoardPlan plan, PartDraft board)
{
    public void Cut(string word, Fields fields)
    {
        switch (word)
        {
            case "taper":
                Taper(fields);
                break;
            case "arch":
                Arch(fields);
                break;
            default:
                Outline(fields);
                break;
        }
    }

    private void Taper(Fields fields)
    {
        var (face, towards) = (Sides.Of(fields.Text("in")!), Sides.Of(fields.Text("towards")!));
        if (face.Axis() == towards.Axis())
            throw Refuse(
                fields.PlaceOf("towards"),
                $"The {Sides.Word(face)} cannot lean in towards the {Sides.Word(towards)}.",
                "an end square to it"
            );
        var whole = board.Extent.Size(towards.Axis());
        var over = fields.LengthOrNull("over")?.Length ?? whole;
        if (over > whole)
            throw Refuse(fields.PlaceOf("over"), $"The taper is longer than the {plan.Name}.", "less, or no over:");
        var by = fields.Length("by").Length;
        if (by >= board.Extent.Size(face.Axis()))
            throw Refuse(
                fields.PlaceOf("by"),
                $"The taper leaves nothing of the {plan.Name} at its end.",
                "less than the board is thick there"
            );
        FaceTaper.Cut(board, face, towards, over, by);
    }

    private void Arch(Fields fields)
    {
        var edge = Sides.Of(fields.Text("in")!);
        var (first, from) = SidePhrase.ReadOffset((Scalar)fields.Node("from")!, fields.Scope);
        var (second, to) = SidePhrase.ReadOffset((Scalar)fields.Node("to")!, fields.Scope);
        if (first.Axis() == edge.Axis() || second.Axis() != first.Axis())
            throw Refuse(
                fields.PlaceOf("from"),
                $"An arch in the {Sides.Word(edge)} begins and ends along it.",
                "from: left 60, to: right 60"
            );
        var axis = first.Axis();
        var a = board.Extent.Side(first) - ((from?.Length ?? Length.Zero) * first.Sign());
        var b = board.Extent.Side(second) - ((to?.Length ?? Length.Zero) * second.Sign());
        var (start, end) = (Length.Min(a, b), Length.Max(a, b));
        var rise = fields.Length("rise").Length;
        var half = (end - start) / 2;
        if (start < board.Extent.Min[axis] || end > board.Extent.Max[axis] || half <= Length.Zero)
            throw Refuse(
                fields.PlaceOf("to"),
                $"The arch has no room along the {plan.Name}.",
                "an arch that ends on it"
            );
        if (rise >= board.Extent.Size(edge.Axis()))
            throw Refuse(fields.PlaceOf("rise"), $"The arch goes right through the {plan.Name}.", "less rise");
        if (rise > half)
            throw Refuse(
                fields.PlaceOf("rise"),
                "The arch is higher than half of a circle.",
                "a rise of no more than half its width"
            );
        // A circle through both ends and the crown: r = (half^2 + rise^2) / 2 rise; its centre lies r below the crown.
        var radius = Length.FromMillimetres(
            ((half.Millimetres * half.Millimetres) + (rise.Millimetres * rise.Millimetres)) / (rise.Millimetres * 2)
        );
        Swept.Cut(
            board,
            CutKind.Arch,
            board.Extent.Min.With(edge.Axis(), board.Extent.Side(edge)).With(axis, start),
            Directions.Along(axis, 1),
            edge.Opposite(),
            [
                (Length.Zero, Length.Zero),
                new OutlineCorner(half * 2, Length.Zero, new OutlineArc(half, rise - radius, Clockwise: false)),
            ]
        );
    }

    private void Outline(Fields fields)
    {
        var from = fields.List("from").OfType<Scalar>().Select(s => Sides.Of(s.Text)).ToList();
        if (from[0].Axis() == from[1].Axis())
            throw Refuse(fields.PlaceOf("from"), "The two sides face each other.", "two sides that meet: [left, top]");
        var corners = fields
            .List("corners")
            .OfType<Sequence>()
            .Select(c => c.Items.OfType<Scalar>().Select(s => fields.Scope.Length(s, "corner").Length).ToList())
            .Select(c => (c[0], c[1]))
            .ToList();
        RefuseCrossing(fields, corners);
        Swept.Cut(
            board,
            CutKind.SawnShape,
            Swept.Corner(board.Extent, from[0], from[1]),
            from[0].Opposite(),
            from[1].Opposite(),
            [.. corners.Select(OutlineCorner.ToOutlineCorner)]
        );
    }

    /// <summary>An outline is walked round once: its sides meet at corners only, and there is something within.</summary>
    private static void RefuseCrossing(Fields fields, List<(Length A, Length B)> corners)
    {
        var twice = Rational.Zero;
        for (var i = 0; i < corners.Count; i++)
        {
            var (p, q) = (corners[i], corners[(i + 1) % corners.Count]);
            twice += (p.A.Millimetres * q.B.Millimetres) - (p.B.Millimetres * q.A.Millimetres);
            for (var j = i + 1; j < corners.Count; j++)
            {
                var isNext = j == i + 1 || (i == 0 && j == corners.Count - 1);
                if (p == corners[j] || (!isNext && Cross(p, q, corners[j], corners[(j + 1) % corners.Count])))
                    throw Refuse(
                        fields.PlaceOf("corners"),
                        "The outline crosses itself.",
                        "corners one after the other"
                    );
            }
        }
        if (twice.Sign == 0)
            throw Refuse(
                fields.PlaceOf("corners"),
                "There is nothing within the outline.",
                "corners that are not in a line"
            );
    }

    private static bool Cross(
        (Length A, Length B) p,
        (Length A, Length B) q,
        (Length A, Length B) r,
        (Length A, Length B) s
    ) =>
        Turn(p, q, r) * Turn(p, q, s) <= 0
        && Turn(r, s, p) * Turn(r, s, q) <= 0
        && Length.Max(Length.Min(p.A, q.A), Length.Min(r.A, s.A))
            <= Length.Min(Length.Max(p.A, q.A), Length.Max(r.A, s.A))
        && Length.Max(Length.Min(p.B, q.B), Length.Min(r.B, s.B))
            <= Length.Min(Length.Max(p.B, q.B), Length.Max(r.B, s.B));

    private static int Turn((Length A, Length B) p, (Length A, Length B) q, (Length A, Length B) r) =>
        (
            ((q.A - p.A).Millimetres * (r.B - p.B).Millimetres) - ((q.B - p.B).Millimetres * (r.A - p.A).Millimetres)
        ).Sign;

    private static CannotBuildException Refuse(SourcePlace place, string message, string expected) =>
        new(new InputError(message, place, expected));
}
