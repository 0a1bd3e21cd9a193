using Dryfit.Measure;

namespace Dryfit.Casework;

/// <summary>A thing that is bought and fitted: hinge, slide, shelf pin, dowel, screw.</summary>
/// <param name="Id">Unique in the piece.</param>
/// <param name="Kind">What it is, as it is asked for: "cup hinge 35 mm", "shelf pin 5 mm".</param>
/// <param name="Ties">Ids of the parts it holds together, the moving one first where one moves.</param>
/// <param name="At">Where it sits, in the frame of the group of the first part it ties.</param>
/// <param name="Count">How many of them sit there together (the screws of one joint, say).</param>
public sealed record Hardware(string Id, string Kind, IReadOnlyList<string> Ties, Point At, int Count = 1)
{
    /// <summary>Whether it goes into the wall: what it ties hangs there.</summary>
    public bool IsInWall { get; init; }

    /// <summary>Whether electricity flows through it.</summary>
    public bool IsElectric { get; init; }

    /// <summary>The size of a pull or knob, centred on <see cref="At"/> on the face of its front; null for all else.</summary>
    public HandleSize? Handle { get; init; }

    /// <summary>
    /// What is seen of rods and rails that are bought by the length, each as the box around it, in the frame of the group of
    /// the first part it ties; none for all else.
    /// </summary>
    public IReadOnlyList<Extent> Bars { get; init; } = [];

    /// <summary>How far a slide lets what runs on it come out; null for all else.</summary>
    public Length? Travel { get; init; }

    /// <summary>What is known of a hinge; null for all else. What it ties is the door's part first, then what it hangs on.</summary>
    public HingeFit? Hinge { get; init; }

    /// <summary>Kilograms that a pair of them carries by its maker's sheet; null where that is not known.</summary>
    public Rational? LoadKg { get; init; }
}

/// <summary>How large a pull or knob is.</summary>
/// <param name="Along">The axis of the piece along which it lies.</param>
/// <param name="Length">Over all, along that axis.</param>
/// <param name="Across">Across it, in the plane of the front.</param>
/// <param name="StandsOff">How far it stands off the front.</param>
public sealed record HandleSize(Axis Along, Length Length, Length Across, Length StandsOff);

/// <summary>What kind of hinge it is.</summary>
public enum HingeForm
{
    /// <summary>A cup let into the back of the door.</summary>
    Cup,

    /// <summary>Leaves let into the edges of the door and of what it hangs on.</summary>
    Butt,

    /// <summary>Screwed on, nothing let in.</summary>
    ScrewedOn,
}

/// <summary>What a check needs to know of a hinge that its solids do not show.</summary>
/// <param name="Form">What kind it is.</param>
/// <param name="Arm">The room of a cup hinge on a side; null where it is not known, and where it sits on a face frame.</param>
public sealed record HingeFit(HingeForm Form, HingeArm? Arm = null);

/// <summary>The room that a shut hinge and its plate want inside the carcase, centred on the hinge.</summary>
/// <param name="Height">Along the edge that they sit at.</param>
/// <param name="Reach">From the back of the door into the carcase.</param>
/// <param name="Aside">From the side that carries the plate.</param>
public sealed record HingeArm(Length Height, Length Reach, Length Aside);
