namespace Dryfit.Solids.Exact;

/// <summary>A point where the planes P, Q and R meet.</summary>
internal struct Point
{
    public double X;
    public double Y;
    public double Z;

    /// <summary>How far the coordinates may be from the truth (those in the mask: nothing).</summary>
    public double Error;
    public int ExactMask;
    public int P;
    public int Q;
    public int R;

    /// <summary>Further planes known to run through it: head of a list.</summary>
    public int More;
    public int NextInCell;

    public double this[int axis]
    {
        readonly get =>
            axis switch
            {
                0 => X,
                1 => Y,
                _ => Z,
            };
        set
        {
            switch (axis)
            {
                case 0:
                    X = value;
                    break;
                case 1:
                    Y = value;
                    break;
                default:
                    Z = value;
                    break;
            }
        }
    }
}
