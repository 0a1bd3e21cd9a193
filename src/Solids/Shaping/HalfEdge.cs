namespace Dryfit.Solids.Shaping;

/// <summary>One side of an edge of the solid: the way around one face, counter-clockwise seen from outside.</summary>
internal struct HalfEdge
{
    public int From;
    public int To;

    /// <summary>Twice the plane, plus 1 where the face looks against the plane's normal.</summary>
    public int Flat;

    /// <summary>The half-edge of the neighbouring face.</summary>
    public int Mate;

    /// <summary>The cut that made the face here; -1 for the blank.</summary>
    public int Cut;
    public int Line;

    /// <summary>Whether it runs against the line's direction.</summary>
    public bool IsFalling;
    public int Next;
    public int Previous;
}
