using Dryfit.Casework.Building;
using Dryfit.Findings;
using Dryfit.Measure;
using Dryfit.Parameters;

namespace Dryfit.Casework.Joinery;

/// <summary>
/// An end butted against a face, with a tongue of its own glued into grooves of both. The grooves stop before the front
/// edge, where they would show.
/// </summary>
internal static class LooseTongue
{
    /// <param name="into">The way the entering part meets the other.</param>
    /// <param name="spread">The axis along the tongue.</param>
    public static Joint Between(PieceBuilder piece, PartDraft receives, PartDraft enters, Direction into, Axis spread)
    {
        var shop = piece.Shop;
        var thickness = shop.Length(JointRules.TongueThickness, "tongue thickness");
        var deep = shop.Length(JointRules.TongueDepth, "depth of the tongue in each");
        var room = shop.Length(JointRules.TongueRoom).Length;
        var stop = shop.Length(JointRules.TongueStop, "stop before each end");
        var thick = (Axis)(3 - (int)into.Axis() - (int)spread);
        var (from, to) = Meeting.Shared(receives, enters, spread);
        var run = Figure.Given("width where they meet", to - from, new TradeOrigin("between parts that stand already"));
        var length = run - stop - stop;
        if (
            length.Length <= Length.Zero
            || deep.Length + room >= receives.Reckoned.Size(into.Axis())
            || thickness.Length * 2 > enters.Reckoned.Size(thick)
        )
            throw new CannotBuildException(
                new InputError(
                    $"There is no room for a loose tongue between the {enters.Name} and the {receives.Name}.",
                    enters.Source,
                    "thicker or wider parts, a smaller tongue in the shop file, or another joint"
                )
            );
        // Tongues from both sides of a partition leave wood between them.
        var size = receives.Reckoned.Size(into.Axis());
        var there =
            receives.Role == Role.Partition
                ? Figure
                    .Min(
                        deep,
                        Figure.Given(
                            "just under half of the other",
                            (size / 2) - (room * 2),
                            new TradeOrigin("between parts that stand already")
                        )
                    )
                    .As("depth of the tongue in the partition")
                : deep;
        var face = Meeting.Centre(enters.Reckoned, into);
        var at = face.With(spread, from + stop.Length)
            .With(thick, face[thick] - (thickness.Length / 2))
            .With(into.Axis(), face[into.Axis()] - (into.Sign() > 0 ? deep.Length : there.Length));
        var tongue = piece.Board(
            enters.Group,
            $"{Local(enters)} {Spoken.Of(into)} tongue",
            Role.Tongue,
            enters.Material,
            Lie.Of(Directions.Along(spread, 1), Directions.Along(thick, 1)),
            length.As("tongue length"),
            (deep + there).As("tongue width"),
            at,
            enters.Source,
            thickness
        );
        var butt = piece.Join(JointKind.Butt, receives, enters, into);
        Let(receives, into);
        Let(enters, into.Opposite());
        return butt;

        void Let(PartDraft part, Direction way)
        {
            var half = tongue.Reckoned.With(way.Opposite(), face[into.Axis()]).Grown(way, room);
            part.CutAway(CutKind.Groove, half, piece.NextJointId);
            piece.Join(JointKind.LooseTongue, part, tongue, way, part == receives ? there.Length : deep.Length, room);
        }
    }

    /// <summary>The name of a part within its group.</summary>
    private static string Local(PartDraft part) =>
        part.Name.StartsWith(part.Group.Name + " ", StringComparison.Ordinal)
            ? part.Name[(part.Group.Name.Length + 1)..]
            : part.Name;
}
