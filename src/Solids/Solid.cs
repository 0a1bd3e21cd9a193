namespace Dryfit.Solids;

/// <summary>
/// A board minus its cuts: a closed two-manifold in board coordinates (the blank runs from 0 to its size).
/// </summary>
public sealed class Solid
{
    /// <summary>Corner points; where the exact solid touches itself a point is there twice.</summary>
    public required IReadOnlyList<Vec3> Vertices { get; init; }

    /// <summary>Three corner indices a triangle, counter-clockwise from outside, grouped by face.</summary>
    public required IReadOnlyList<int> Triangles { get; init; }

    /// <summary>The faces, each with its run of triangles.</summary>
    public required IReadOnlyList<Face> Faces { get; init; }

    /// <summary>Volume in cubic grid units, of the faceted solid.</summary>
    public required double Volume { get; init; }

    /// <summary>Surface in square grid units, of the faceted solid.</summary>
    public required double Area { get; init; }

    /// <summary>The centre of mass of the faceted solid.</summary>
    public required Vec3 Centroid { get; init; }

    /// <summary>The box around it in board coordinates.</summary>
    public required Box Bounds { get; init; }

    /// <summary>How many separate pieces it falls into: 1 is a sound board, 0 means that nothing is left.</summary>
    public required int PieceCount { get; init; }

    /// <summary>Whether the exact solid touches itself in an edge or a corner: nothing holds there.</summary>
    public bool TouchesItself { get; init; }

    /// <summary>Length, width and thickness of the blank it was made from.</summary>
    public Vec3 Size { get; init; }

    /// <summary>The cuts it was made with, as given: <see cref="Face.Cut"/> counts in these.</summary>
    public IReadOnlyList<Cut> Cuts { get; init; } = [];

    private Measuring.FacePatch[]? patches;

    /// <summary>Its surface in patches with boxes, for measuring.</summary>
    internal Measuring.FacePatch[] Patches => patches ??= Measuring.FacePatches.Of(this);
}

/// <summary>One face: all triangles of one flat of the solid, or one facet strip of a round.</summary>
/// <param name="Cut">Index of the cut that made it; -1 for the blank itself.</param>
/// <param name="Surface">The true surface it lies on.</param>
/// <param name="Normal">Outward unit normal of the flat (of the facet, on a round).</param>
/// <param name="FirstTriangle">Index of its first triangle.</param>
/// <param name="TriangleCount">How many triangles it has.</param>
/// <param name="Side">Index of the side of that cut's <see cref="PrismCut.Outline"/> that it lies on; -1 for its ends and for
/// all that no outline made. The faces of one cut in the order of their sides are its profile, swept.</param>
public sealed record Face(int Cut, Surface Surface, Vec3 Normal, int FirstTriangle, int TriangleCount, int Side = -1);
