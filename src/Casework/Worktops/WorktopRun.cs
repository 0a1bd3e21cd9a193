using Dryfit.Casework.Building;
using Dryfit.Casework.Corners;
using Dryfit.Casework.Words;
using Dryfit.Findings;
using Dryfit.Measure;
using Dryfit.Parameters;

namespace Dryfit.Casework.Worktops;

/// <summary>The carcases under a worktop, from the left: in one line and of one height.</summary>
internal sealed class WorktopRun
{
    private readonly SourcePlace _place;

    private WorktopRun(IReadOnlyList<(Body Body, GroupDraft Group)> carcases, SourcePlace place)
    {
        Carcases = carcases;
        _place = place;
    }

    public IReadOnlyList<(Body Body, GroupDraft Group)> Carcases { get; }

    private IEnumerable<Body> Bodies => Carcases.Select(c => c.Body);

    /// <summary>The front across a corner of the one carcase under it; null where all are square.</summary>
    public DiagonalPlan? Diagonal => Carcases[0].Body.Diagonal;

    public PlanTurn? Turn => Carcases[0].Body.Turn;

    public Length Left => Carcases[0].Body.Envelope.Min.X;

    public Length Top => Carcases[0].Body.Envelope.Max.Z;

    public Length Front => Bodies.Select(b => b.Envelope.Min.Y).Min();

    public Length Back => Bodies.Select(b => b.Envelope.Max.Y).Max();

    /// <summary>From the left end of the first carcase to the right end of the last, as a sum.</summary>
    public Figure Width
    {
        get
        {
            var width = Carcases[0].Body.Width;
            foreach (var (before, after) in Bodies.Zip(Bodies.Skip(1)))
            {
                var gap = after.Envelope.Min.X - before.Envelope.Max.X;
                if (gap.Sign != 0)
                    width += Figure.Given($"gap before the {after.Name}", gap, new WrittenOrigin(_place));
                width += after.Width;
            }
            return width;
        }
    }

    /// <summary>From the foremost front to the rearmost back.</summary>
    public Figure Depth =>
        Bodies.FirstOrDefault(b => b.Envelope.Min.Y == Front && b.Envelope.Max.Y == Back) is { } whole
            ? whole.Depth
            : Figure.Given("depth of the run", Back - Front, new WrittenOrigin(_place));

    public static WorktopRun Of(IEnumerable<(Body Body, GroupDraft Group)> carcases, SourcePlace place)
    {
        var run = carcases.OrderBy(c => c.Body.Envelope.Min.X).ToList();
        var first = run[0].Body;
        foreach (var (body, _) in run)
        {
            if (body.Diagonal is not null && run.Count > 1)
                throw Refused(
                    $"The {body.Name} has its front across the corner: its worktop is a board by itself.",
                    "a worktop over it alone, after that of its run and before that of the return"
                );
            if (body.Turn != first.Turn)
                throw Refused(
                    $"The {body.Name} stands at an angle to the {first.Name}: one worktop does not lie on both.",
                    "a worktop for each of the two runs"
                );
            if (body.Envelope.Max.Z != first.Envelope.Max.Z)
                throw Refused(
                    $"The {body.Name} is not as high as the {first.Name}.",
                    "carcases of one height under a worktop"
                );
        }
        return new(run, place);

        CannotBuildException Refused(string message, string wanted) => new(new InputError(message, place, wanted));
    }
}
