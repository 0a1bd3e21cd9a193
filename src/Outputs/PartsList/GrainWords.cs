using System.Globalization;
using Dryfit.Casework;
using Dryfit.Measure;
using Dryfit.Outputs.Text;

namespace Dryfit.Outputs.PartsList;

/// <summary>From which board a front is cut that shares its grain with its neighbours, and where along it.</summary>
internal static class GrainWords
{
    /// <summary>"2 of 3 from one board for chest row 1, 900 long over all: 305 from its left end"; null where it is cut by itself.</summary>
    public static string? Of(Part part, LengthFormat format) =>
        part.Run is { } run
            ? string.Create(
                CultureInfo.InvariantCulture,
                $"{run.Number} of {run.Of} from one board for {PlainText.Apart(run.Board)}, {format.Write(run.Span)} over all: {format.Write(run.At)} from its {(run.Begins == Direction.Left ? "left" : "top")}"
            )
            : null;
}
