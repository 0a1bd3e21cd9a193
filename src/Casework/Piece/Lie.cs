namespace Dryfit.Casework;

/// <summary>
/// How a board lies in the piece: where its grain runs and where its show face looks. Board coordinates are x along the
/// length (the grain), y across the width, z through the thickness towards the show face.
/// </summary>
/// <param name="Along">Where the board's length points.</param>
/// <param name="Shows">Where its show face looks; never along the grain.</param>
public readonly record struct Lie(Direction Along, Direction Shows)
{
    /// <summary>Where the board's width points, so that the three make a right-handed set.</summary>
    public Direction Across => Directions.Cross(Shows, Along);

    public static Lie Of(Direction along, Direction shows) => new(along, shows);
}

/// <summary>A board's place: board point (x, y, z) stands at Origin + x Along + y Across + z Shows.</summary>
public readonly record struct Placement(Point Origin, Lie Lie)
{
    public Point ToPiece(Point board) =>
        Origin.Moved(Lie.Along, board.X).Moved(Lie.Across, board.Y).Moved(Lie.Shows, board.Z);

    public Point ToBoard(Point piece)
    {
        var d = piece - Origin;
        return new(
            d[Lie.Along.Axis()] * Lie.Along.Sign(),
            d[Lie.Across.Axis()] * Lie.Across.Sign(),
            d[Lie.Shows.Axis()] * Lie.Shows.Sign()
        );
    }

    /// <summary>The direction of the board (its own x, y, z as Right, Back, Up) in which a direction of the piece points.</summary>
    public Direction ToBoard(Direction piece)
    {
        if (piece.Axis() == Lie.Along.Axis())
            return Directions.Along(Axis.X, piece.Sign() * Lie.Along.Sign());
        if (piece.Axis() == Lie.Across.Axis())
            return Directions.Along(Axis.Y, piece.Sign() * Lie.Across.Sign());
        return Directions.Along(Axis.Z, piece.Sign() * Lie.Shows.Sign());
    }

    public Extent ToPiece(Extent board) => Ordered(ToPiece(board.Min), ToPiece(board.Max));

    public Extent ToBoard(Extent piece) => Ordered(ToBoard(piece.Min), ToBoard(piece.Max));

    private static Extent Ordered(Point a, Point b) =>
        new(
            new(Measure.Length.Min(a.X, b.X), Measure.Length.Min(a.Y, b.Y), Measure.Length.Min(a.Z, b.Z)),
            new(Measure.Length.Max(a.X, b.X), Measure.Length.Max(a.Y, b.Y), Measure.Length.Max(a.Z, b.Z))
        );
}
