namespace Dryfit.Outputs.FrontView;

/// <summary>A point of the paper in millimetres, Y down.</summary>
internal readonly record struct PaperPoint(double X, double Y)
{
    public PaperPoint Moved(double right, double down) => new(X + right, Y + down);

    public static PaperPoint Between(PaperPoint a, PaperPoint b, double t) =>
        new(a.X + ((b.X - a.X) * t), a.Y + ((b.Y - a.Y) * t));

    public double DistanceTo(PaperPoint other) =>
        Math.Sqrt(((X - other.X) * (X - other.X)) + ((Y - other.Y) * (Y - other.Y)));

    /// <summary>As a path writes it.</summary>
    public override string ToString() => $"{SvgWriter.Number(X)},{SvgWriter.Number(Y)}";
}

/// <summary>A rectangle of the paper in millimetres, Y down.</summary>
internal readonly record struct Area(double Left, double Top, double Right, double Bottom)
{
    public double Width => Right - Left;

    public double Height => Bottom - Top;

    public PaperPoint Centre => new((Left + Right) / 2, (Top + Bottom) / 2);

    public static Area Around(PaperPoint a, PaperPoint b) =>
        new(Math.Min(a.X, b.X), Math.Min(a.Y, b.Y), Math.Max(a.X, b.X), Math.Max(a.Y, b.Y));

    public static Area At(PaperPoint centre, double width, double height) =>
        new(centre.X - (width / 2), centre.Y - (height / 2), centre.X + (width / 2), centre.Y + (height / 2));

    public Area Grown(double by) => new(Left - by, Top - by, Right + by, Bottom + by);

    public bool Touches(Area other) =>
        Left < other.Right && other.Left < Right && Top < other.Bottom && other.Top < Bottom;

    public bool Holds(Area other) =>
        Left <= other.Left && Top <= other.Top && Right >= other.Right && Bottom >= other.Bottom;
}
