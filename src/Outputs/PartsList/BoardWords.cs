using Dryfit.Casework;

namespace Dryfit.Outputs.PartsList;

/// <summary>What the six sides of a board are called, as it stands in the piece: "show face", "top edge", "left end".</summary>
internal static class BoardWords
{
    /// <param name="board">A direction of the board.</param>
    public static string Side(Placement place, Direction board) =>
        board switch
        {
            Direction.Up => "show face",
            Direction.Down => "reverse face",
            Direction.Right or Direction.Left => $"{PieceSide(ToPiece(place, board))} end",
            _ => $"{PieceSide(ToPiece(place, board))} edge",
        };

    /// <summary>What a measure along an axis of the board is called.</summary>
    public static string Measure(Axis axis) =>
        axis switch
        {
            Axis.X => "long",
            Axis.Y => "wide",
            _ => "thick",
        };

    /// <summary>What the whole of the board along an axis is called.</summary>
    public static string Whole(Axis axis) =>
        axis switch
        {
            Axis.X => "full length",
            Axis.Y => "full width",
            _ => "full thickness",
        };

    /// <summary>Where a direction of the piece is on it: the top is up.</summary>
    public static string PieceSide(Direction direction) =>
        direction switch
        {
            Direction.Up => "top",
            Direction.Down => "bottom",
            Direction.Left => "left",
            Direction.Right => "right",
            Direction.Front => "front",
            _ => "back",
        };

    private static Direction ToPiece(Placement place, Direction board)
    {
        var way = board.Axis() switch
        {
            Axis.X => place.Lie.Along,
            Axis.Y => place.Lie.Across,
            _ => place.Lie.Shows,
        };
        return board.Sign() > 0 ? way : way.Opposite();
    }
}
