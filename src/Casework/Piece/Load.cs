using Dryfit.Findings;
using Dryfit.Measure;

namespace Dryfit.Casework;

/// <summary>What a part of the piece is made to hold when it is full.</summary>
/// <param name="Name">What holds it, as a maker says it: "left bay bottle rack".</param>
/// <param name="What">What is held: "bottles".</param>
/// <param name="Count">How many.</param>
/// <param name="GramsEach">What one of them weighs, full.</param>
/// <param name="Top">The highest place where one is put or taken, over the foot of the piece.</param>
/// <param name="Reach">The highest place that the shop holds to be reached with ease, over the floor.</param>
/// <param name="Parts">Ids of the parts that carry it.</param>
/// <param name="Assumption">Where the weight comes from.</param>
/// <param name="Source">The line of the recipe that asks for it.</param>
public sealed record Load(
    string Name,
    string What,
    int Count,
    int GramsEach,
    Length Top,
    Length Reach,
    IReadOnlyList<string> Parts,
    string Assumption,
    SourcePlace Source
);
