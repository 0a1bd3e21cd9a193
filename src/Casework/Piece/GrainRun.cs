using Dryfit.Measure;

namespace Dryfit.Casework;

/// <summary>
/// Where a front lies in the one board that it is cut from with its neighbours, so that the grain runs on over all of them.
/// </summary>
/// <param name="Board">What the board is called: "fronts of row 2".</param>
/// <param name="Number">Which of them this one is, from 1, from the left or from the top.</param>
/// <param name="Of">How many are cut from it.</param>
/// <param name="Span">From the first one's outer side to the last one's, saw cuts included.</param>
/// <param name="At">From where the first one begins to where this one does, the same way.</param>
/// <param name="Begins">The side of the piece from which they are counted: left, or up.</param>
public sealed record GrainRun(string Board, int Number, int Of, Length Span, Length At, Direction Begins);
