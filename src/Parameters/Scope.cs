using Dryfit.Findings;
using Dryfit.Measure;
using Dryfit.Recipe;

namespace Dryfit.Parameters;

/// <summary>
/// The names a recipe's formulas may use, worked out when asked for and only once, in any order; cycles are reported
/// with the whole loop. It also gathers the errors of everything read through it.
/// </summary>
public sealed class Scope
{
    private readonly List<InputError> _errors = [];

    public Scope(LengthUnit unit)
    {
        Unit = unit;
    }

    /// <summary>The unit of bare numbers where a length is meant.</summary>
    public LengthUnit Unit { get; }

    /// <summary>Everything wrong so far, in the order found.</summary>
    public IReadOnlyList<InputError> Errors => _errors;

    public void Report(InputError error) => _errors.Add(error);

    /// <summary>Makes a name known whose figure is worked out by <paramref name="work"/> when first asked for.</summary>
    /// <param name="name">As formulas write it: <c>side_bay</c>, <c>base.width</c>.</param>
    /// <param name="place">Where it is said, for errors; null for the tool's own.</param>
    /// <param name="work">Gives the figure; may ask the scope for other names.</param>
    public void Define(string name, SourcePlace? place, Func<Figure> work) =>
        throw new NotSupportedException($"{name} {place} {work is null}");

    /// <summary>Works a scalar out as a length called <paramref name="name"/> in sums.</summary>
    public Figure Length(Scalar scalar, string name) => throw new NotSupportedException($"{scalar} {name}");

    /// <summary>Works a scalar out as a whole number (within a million either way).</summary>
    public int Count(Scalar scalar) => throw new NotSupportedException($"{scalar}");

    /// <summary>Works a scalar out as a plain number.</summary>
    public Figure Number(Scalar scalar, string name) => throw new NotSupportedException($"{scalar} {name}");
}
