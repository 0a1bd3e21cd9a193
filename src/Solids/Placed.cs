namespace Dryfit.Solids;

/// <summary>A solid in its place: board coordinates go to world coordinates by the frame.</summary>
public sealed record Placed(Solid Solid, Frame Frame);
