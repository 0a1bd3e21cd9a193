using Dryfit.Casework;
using Dryfit.Findings;
using Dryfit.Solids;

namespace Dryfit.Inspection;

/// <summary>Whether inset fronts lie in one plane with the parts beside them.</summary>
internal sealed class FrontFlush : ICheck
{
    public static FindingKind Proud { get; } =
        new(
            "front-proud",
            Severity.Warn,
            "Front stands proud",
            "An inset front that stands out catches the light and the sleeve; its hinges or stops are set, or it is thinned.",
            "common practice"
        );

    public static FindingKind Shy { get; } =
        new(
            "front-shy",
            Severity.Warn,
            "Front stands shy",
            "An inset front that lies behind its frame shows a shadow along one side; its stops or hinges are packed.",
            "common practice"
        );

    public string Name => "inset fronts flush with what is beside them";

    public string Of => "fronts";

    public string How =>
        "The foremost point of an inset front is measured against the foremost points of the parts at its left and right "
        + "(bottom and top where there are none); within 1/128 in (0.2 mm) it is flush.";

    public IReadOnlyList<FindingKind> Kinds { get; } = [Proud, Shy];

    public Outcome Run(InspectedPiece piece)
    {
        var covered = 0;
        var findings = new List<Finding>();
        foreach (var front in piece.Piece.Fronts.Where(front => front.Hang == Hang.Inset && !front.Motion.IsSideways()))
        {
            var bounds = piece.Opening(front.Opening).Bounds;
            var sides = new[] { bounds.Left, bounds.Right }.Where(side => side.Count > 0).ToList();
            if (sides.Count == 0)
                sides = [.. new[] { bounds.Bottom, bounds.Top }.Where(side => side.Count > 0)];
            if (sides.Count == 0 || front.Face.Count == 0)
                continue;
            covered++;
            if (Judge(piece.From(front), front, sides) is { } finding)
                findings.Add(finding);
        }
        return new(covered, findings);
    }

    /// <summary>The bands on the edges of some parts: they are what one sees beside a front.</summary>
    private static IEnumerable<string> BandsOf(InspectedPiece piece, IReadOnlyList<string> parts) =>
        piece
            .Piece.Joints.Where(joint =>
                joint.Kind == JointKind.Edged && parts.Contains(joint.Receives, StringComparer.Ordinal)
            )
            .Select(joint => joint.Enters);

    private static Finding? Judge(InspectedPiece piece, Front front, List<IReadOnlyList<string>> sides)
    {
        var face = FrontSides.Around(piece.ShapesOf(front.Face));
        Finding? worst = null;
        var most = Tolerance.Fitting;
        foreach (var side in sides)
        {
            var beside = FrontSides.Around(piece.ShapesOf(side.Concat(BandsOf(piece, side))));
            var behind = piece.ToLength(face.Min.Y - beside.Min.Y);
            if (Measure.Length.Abs(behind) <= most)
                continue;
            most = Measure.Length.Abs(behind);
            var shy = behind.Sign > 0;
            var name = piece.GroupName(front.Group);
            var part = piece.Shape(front.Face[0]).Part;
            var middle = face.Centre();
            worst = new()
            {
                Kind = shy ? Shy : Proud,
                Message = shy
                    ? $"The {name} lies behind what is beside it."
                    : $"The {name} stands out from what is beside it.",
                Parts = PartIds.Together(front.Face, side),
                Place = piece.Group(front.Group)?.Source ?? part.Source,
                Where = piece.ToSpace(
                    new Vec3(middle.X, beside.Min.Y, middle.Z),
                    new Vec3(middle.X, face.Min.Y, middle.Z)
                ),
                Measured = new MeasuredLength(shy ? "shy by" : "proud by", most),
                Wanted = Wanted.Exactly(Measure.Length.Zero),
                Remedy = new($"Set the {name} {piece.Say(most)} {(shy ? "forward" : "back")}.", Sure: true),
            };
        }
        return worst;
    }
}
