using Dryfit.Casework.Drawers;
using Dryfit.Casework.Lights;
using Dryfit.Casework.Shelving;
using Dryfit.Casework.Shelving.Racks;
using Dryfit.Findings;
using Dryfit.Parameters;
using Dryfit.Recipe;

namespace Dryfit.Casework.Carcases;

/// <summary>A region of the front as the recipe says it: how much it takes of its parent, and what it is made of.</summary>
internal sealed record Region
{
    /// <summary>A size of its own along its parent's row or column; null where it takes a share of what is left.</summary>
    public Figure? Fixed { get; init; }

    /// <summary>Its share of what is left; 1 where nothing is said.</summary>
    public required Measure.Rational Share { get; init; }

    /// <summary>How it grows against the one before it, in a bank that is graduated; null where it does not.</summary>
    public Growth? Growth { get; init; }

    /// <summary>Side by side, left to right; or one above the other, top to bottom; or neither.</summary>
    public IReadOnlyList<Region> Columns { get; init; } = [];

    public IReadOnlyList<Region> Rows { get; init; } = [];

    public required Filling Filling { get; init; }

    /// <summary>What the recipe says of the filling; null where the key alone stands.</summary>
    public Node? Said { get; init; }

    public ShelvesPlan? Shelves { get; init; }

    /// <summary>Trays on slides behind its doors; null for none.</summary>
    public PullOutsPlan? PullOuts { get; init; }

    public LightsPlan? Lights { get; init; }

    public RackPlan? Rack { get; init; }

    public ClothesRailPlan? ClothesRail { get; init; }

    public required SourcePlace Place { get; init; }

    public bool IsLeaf => Columns.Count == 0 && Rows.Count == 0;

    /// <summary>All regions without further division, in reading order.</summary>
    public IEnumerable<Region> Leaves => IsLeaf ? [this] : Columns.Concat(Rows).SelectMany(r => r.Leaves);
}

/// <summary>What fills an opening.</summary>
internal enum Filling
{
    Open,
    Doors,
    Drawer,

    /// <summary>What looks like a drawer and stays where it is.</summary>
    FalseFront,
}
