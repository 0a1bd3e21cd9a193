using Dryfit.Solids;

namespace Dryfit.Outputs.FrontView;

/// <summary>Takes points of the piece's front view to the paper.</summary>
/// <param name="MmPerUnit">Millimetres of paper to a grid unit of the piece.</param>
/// <param name="Left">Where X = 0 of the piece stands on the paper.</param>
/// <param name="Floor">Where Z = 0 of the piece stands on the paper.</param>
internal sealed record View(double MmPerUnit, double Left, double Floor)
{
    public PaperPoint ToPaper(double x, double z) => new(Left + (x * MmPerUnit), Floor - (z * MmPerUnit));

    public PaperPoint ToPaper(Vec2 point) => ToPaper(point.X, point.Y);

    public Area ToPaper(Span2 span) => Area.Around(ToPaper(span.MinX, span.MinZ), ToPaper(span.MaxX, span.MaxZ));
}
