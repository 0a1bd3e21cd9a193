namespace Dryfit.Solids;

/// <summary>Material taken away from a board, in board coordinates. It may reach past the blank or end flush with it.</summary>
public abstract record Cut;

/// <summary>A square cut with its faces along the board's own directions: groove, dado, rabbet, tongue shoulder.</summary>
public sealed record BoxCut(Vec3 Min, Vec3 Max) : Cut;

/// <summary>
/// An outline (simple, may be non-convex, with arcs and curves) in the plane of <paramref name="Frame"/>'s U and V, swept
/// along W from 0 to <paramref name="Height"/>: mitre, bevel, moulding, arch. Its faces remember their side of the outline
/// and the true round of an arc.
/// </summary>
public sealed record PrismCut(Frame Frame, Profile Outline, double Height) : Cut;

/// <summary>
/// A round hole along W of <paramref name="Frame"/> from 0 to <paramref name="Depth"/>. The solid holds it as a regular
/// polygon of <paramref name="Segments"/> corners on the radius, the first one on U; its face remembers the true cylinder.
/// </summary>
public sealed record BoreCut(Frame Frame, double Radius, double Depth, int Segments) : Cut;
