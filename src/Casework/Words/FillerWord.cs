using Dryfit.Casework.Building;
using Dryfit.Casework.Carcases;
using Dryfit.Findings;
using Dryfit.Parameters;
using Dryfit.Recipe;

namespace Dryfit.Casework.Words;

/// <summary><c>filler:</c> a strip over the gap between a carcase and the one beside it.</summary>
internal static class FillerWord
{
    public static Shape Shape { get; } = new EitherShape(new BareShape(), new NameShape("material"));

    public static FillerPlan? Read(Fields carcase, PieceBuilder piece, Body body, Material fronts)
    {
        if (!carcase.Has("filler"))
            return null;
        if (body.Spot.Towards is not (Direction.Left or Direction.Right) || carcase.LengthOrNull("gap") is not { } gap)
            throw new CannotBuildException(
                new InputError(
                    "A filler closes the gap to the carcase beside, and there is none.",
                    carcase.PlaceOf("filler"),
                    "a carcase that stands right of, left of or returns from another, with a gap"
                )
            );
        var material = carcase.Text("filler") is { Length: > 0 } name
            ? piece.Materials.Get(name, carcase.PlaceOf("filler"))
            : fronts;
        return new(body.Spot.Towards.Value, gap.As("filler width"), material);
    }
}
