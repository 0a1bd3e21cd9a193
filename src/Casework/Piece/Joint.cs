using Dryfit.Findings;
using Dryfit.Measure;

namespace Dryfit.Casework;

/// <summary>How two parts are tied together.</summary>
public enum JointKind
{
    /// <summary>Face to face, glued.</summary>
    Butt,
    Dado,
    Groove,
    Rabbet,

    /// <summary>A stub tenon (or tongue) in the groove that runs along the other part.</summary>
    StubTenon,
    Dowel,

    /// <summary>Two ends cut at an angle and glued; the seam runs through the corner.</summary>
    Mitre,

    /// <summary>Face to face, held by screws.</summary>
    Screwed,

    /// <summary>Face to face, held by screws through slanted pocket holes.</summary>
    PocketScrewed,

    /// <summary>Tails of the one between pins of the other.</summary>
    Dovetail,

    /// <summary>Square fingers of both between each other.</summary>
    BoxJoint,

    /// <summary>A tenon cut on the end of the one in a mortise of the other.</summary>
    MortiseAndTenon,

    /// <summary>Both cut away to half, one over the other.</summary>
    Lap,

    /// <summary>A tongue of its own in grooves of both; the tongue enters.</summary>
    LooseTongue,

    /// <summary>Face to face, with biscuits in slots of both.</summary>
    Biscuit,

    /// <summary>Face to face, drawn together by a fitting that can be undone.</summary>
    Connector,

    /// <summary>Let in with room to move, not glued: panels, glass, backs in grooves, drawer bottoms.</summary>
    Loose,

    /// <summary>Face to face, held by bolts through both, so that the two come apart again.</summary>
    Bolted,

    /// <summary>Runs in a groove of the other, and can be lifted out: sliding doors.</summary>
    Runs,

    /// <summary>Edging on its panel.</summary>
    Edged,

    /// <summary>Stands or lies on the other part by its weight, or held by screws from inside.</summary>
    Resting,
}

/// <summary>Two parts that are meant to meet, and how.</summary>
/// <param name="Id">Unique in the piece.</param>
/// <param name="Kind">How they are tied.</param>
/// <param name="Receives">Id of the part that takes the other: it has the groove, the dado, the face.</param>
/// <param name="Enters">Id of the part that goes in or against it.</param>
/// <param name="Into">The way the entering part goes to meet the other, in the frame of the entering part's group.</param>
/// <param name="Engagement">How deep it should reach into the other; zero where they only touch.</param>
/// <param name="Play">How far the two may stay apart in the <paramref name="Into"/> direction when all is well; zero where
/// shoulder or face must touch.</param>
/// <param name="Glued">False where the parts must stay free to move.</param>
/// <param name="Source">The line of the recipe that asks for it.</param>
public sealed record Joint(
    string Id,
    JointKind Kind,
    string Receives,
    string Enters,
    Direction Into,
    Length Engagement,
    Length Play,
    bool Glued,
    SourcePlace Source
)
{
    /// <summary>Which of their edges should lie in one plane, or how far the entering part should stand past the other.</summary>
    public IReadOnlyList<EdgeLine> Lines { get; init; } = [];

    public bool Equals(Joint? other) =>
        other is not null
        && (Id, Kind, Receives, Enters, Into) == (other.Id, other.Kind, other.Receives, other.Enters, other.Into)
        && (Engagement, Play, Glued, Source) == (other.Engagement, other.Play, other.Glued, other.Source)
        && Lines.SequenceEqual(other.Lines);

    public override int GetHashCode() => HashCode.Combine(Id, Kind, Receives, Enters, Into);
}

/// <summary>How two edges of joined parts should lie to each other on one side, in the frame of the entering part's group.</summary>
/// <param name="Way">Which side.</param>
/// <param name="Past">How far the entering part should stand out past the other there; below zero where it stands back, zero
/// where the two are flush.</param>
public sealed record EdgeLine(Direction Way, Length Past);
