using System.Globalization;
using Dryfit.Casework;
using Dryfit.Outputs.Text;

namespace Dryfit.Outputs.PartsList;

/// <summary>The joints of parts, looked up by part.</summary>
internal sealed class JointWords
{
    private readonly ILookup<string, PartJoint> _byPart;

    public JointWords(Piece piece)
    {
        var roles = piece.Parts.ToDictionary(part => part.Id, part => part.Role, StringComparer.Ordinal);
        _byPart = piece
            .Joints.SelectMany(joint =>
                new[]
                {
                    (
                        Part: joint.Enters,
                        Joint: new PartJoint(joint, joint.Receives, IsEntering: true, Role(joint.Receives))
                    ),
                    (
                        Part: joint.Receives,
                        Joint: new PartJoint(joint, joint.Enters, IsEntering: false, Role(joint.Enters))
                    ),
                }
            )
            .ToLookup(pair => pair.Part, pair => pair.Joint, StringComparer.Ordinal);

        string Role(string id) => roles.TryGetValue(id, out var role) ? Words.Of(role) : id;
    }

    public IEnumerable<PartJoint> Of(Part part) => _byPart[part.Id];

    /// <summary>The joints of a part in short: "2 x stub tenon in door stile, takes door panel (loose)".</summary>
    public string Summary(Part part)
    {
        var summary = string.Join(
            ", ",
            Of(part)
                .GroupBy(joint => joint.Words, StringComparer.Ordinal)
                .Select(same =>
                    same.Count() == 1
                        ? same.Key
                        : string.Create(CultureInfo.InvariantCulture, $"{same.Count()} x {same.Key}")
                )
        );
        return summary.Length > 0 ? summary : "none";
    }
}

/// <summary>A joint as one of its two parts has it.</summary>
/// <param name="Other">Id of the other part.</param>
/// <param name="IsEntering">True where this part goes in or against the other.</param>
/// <param name="OtherRole">What the other part is for.</param>
internal sealed record PartJoint(Joint Joint, string Other, bool IsEntering, string OtherRole)
{
    public string Words
    {
        get
        {
            var kind = Text.Words.Of(Joint.Kind);
            return IsEntering ? $"{kind} in {OtherRole}" : $"takes {OtherRole} ({kind})";
        }
    }
}
