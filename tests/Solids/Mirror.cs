namespace Dryfit.Solids.Tests;

/// <summary>Cuts mirrored along the length of their board.</summary>
internal static class Mirror
{
    public static Cut[] Cuts(Cut[] cuts, double length) => [.. cuts.Select(cut => Mirrored(cut, length))];

    private static Cut Mirrored(Cut cut, double length) =>
        cut switch
        {
            BoxCut box => new BoxCut(box.Min with { X = length - box.Max.X }, box.Max with { X = length - box.Min.X }),
            BoreCut bore => bore with { Frame = Mirrored(bore.Frame, length) },
            PrismCut prism => prism with
            {
                Frame = Mirrored(prism.Frame, length),
                Outline = [.. prism.Outline.Reverse().Select(corner => corner with { Y = -corner.Y })],
            },
            _ => throw new ArgumentOutOfRangeException(nameof(cut)),
        };

    private static Frame Mirrored(Frame frame, double length) =>
        new(
            frame.Origin with
            {
                X = length - frame.Origin.X,
            },
            frame.U with
            {
                X = -frame.U.X,
            },
            (frame.V with { X = -frame.V.X }) * -1,
            frame.W with
            {
                X = -frame.W.X,
            }
        );
}
