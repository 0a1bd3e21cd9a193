using Dryfit.Casework.Building;
using Dryfit.Casework.Shaping;
using Dryfit.Findings;
using Dryfit.Measure;
using Dryfit.Parameters;
using Dryfit.Recipe;

namespace Dryfit.Casework.Worktops;

/// <summary>Cuts a hole with round corners through a worktop.</summary>
internal static class CutOut
{
    public static void Cut(PieceBuilder piece, Worktop top, Entry entry, SourcePlace place)
    {
        var fields = new Fields((Mapping)entry.Value, piece.Scope);
        var size = fields.List("size").OfType<Scalar>().ToList();
        var width = piece.Scope.Length(size[0], "cut-out width").Length;
        var depth = piece.Scope.Length(size[1], "cut-out depth").Length;
        var radius = (fields.LengthOrNull("corners") ?? piece.Shop.Length(WorktopRules.CutOutCorner)).Length;
        if (radius * 2 > Length.Min(width, depth))
            throw Refused($"The corners of the {entry.Key} cut-out are rounder than it is wide.", "a smaller radius");
        var x = Left(fields, top, entry, width);
        var y = fields.LengthOrNull("from front") is { } front
            ? top.Front + front.Length
            : (top.Front + top.Back - depth) / 2;
        var hole = new Extent(new(x, y, top.Run.Top), new(x + width, y + depth, top.Run.Top));
        var board =
            top.Lengths.FirstOrDefault(b =>
                hole.Min.X > b.Reckoned.Min.X
                && hole.Max.X < b.Reckoned.Max.X
                && hole.Min.Y > top.Front
                && hole.Max.Y < top.Back
            )
            ?? throw Refused(
                $"The {entry.Key} cut-out does not lie within one length of the worktop.",
                "a place with wood all round it, clear of the joints"
            );
        Swept.Cut(
            board,
            CutKind.CutOut,
            hole.Min,
            Direction.Right,
            Direction.Back,
            Outline(width, depth, radius),
            called: $"{entry.Key} cut-out"
        );

        CannotBuildException Refused(string message, string wanted) =>
            new(new InputError(message, entry.KeyPlace, wanted));
    }

    private static Length Left(Fields fields, Worktop top, Entry entry, Length width)
    {
        if (fields.Has("over") == fields.Has("from left"))
            throw new CannotBuildException(
                new InputError(
                    fields.Has("over")
                        ? $"The {entry.Key} cut-out lies over a carcase or so far from the left."
                        : $"Where the {entry.Key} cut-out lies is missing.",
                    entry.KeyPlace,
                    "over: the name of a carcase, or from left"
                )
            );
        if (fields.LengthOrNull("from left") is { } left)
            return top.Left + left.Length;
        var name = fields.Text("over");
        var under =
            top.Run.Carcases.FirstOrDefault(c => c.Body.Name == name).Body
            ?? throw new CannotBuildException(
                new InputError(
                    $"The worktop does not lie on the {name}.",
                    fields.PlaceOf("over"),
                    $"one of {string.Join(", ", top.Run.Carcases.Select(c => c.Body.Name))}"
                )
            );
        return under.Envelope.Min.X + ((under.Envelope.Width - width) / 2);
    }

    /// <summary>A rectangle with rounded corners, counter-clockwise from its lower left.</summary>
    private static OutlineCorner[] Outline(Length width, Length depth, Length radius)
    {
        var (zero, r) = (Length.Zero, radius);
        if (r == Length.Zero)
            return [(zero, zero), (width, zero), (width, depth), (zero, depth)];
        return
        [
            (r, zero),
            new(width - r, zero, Arc(width - r, r)),
            (width, r),
            new(width, depth - r, Arc(width - r, depth - r)),
            (width - r, depth),
            new(r, depth, Arc(r, depth - r)),
            (zero, depth - r),
            new(zero, r, Arc(r, r)),
        ];

        static OutlineArc Arc(Length a, Length b) => new(a, b, Clockwise: false);
    }
}
