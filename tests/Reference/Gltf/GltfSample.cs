using Dryfit.Casework;
using Dryfit.Outputs.Glb;
using Dryfit.Reference.Tests.Pieces;

namespace Dryfit.Reference.Tests.Gltf;

/// <summary>A cupboard with doors and shelf pins, written once and looked at by every check.</summary>
internal static class GltfSample
{
    public const double WidthMm = 600;
    public const double HeightMm = 720;

    /// <summary>560 of carcase, 2 of room behind the doors, 18 of door.</summary>
    public const double DepthMm = 580;

    private static readonly Piece Piece = BuiltPiece.From(
        """
        piece: Sample
        units: mm
        materials: { body: birch plywood 18 }
        carcases:
          box:
            size: [600, 720, 560]
            shelves: { adjustable: 1 }
            front: { doors: "slab pair, overlaid" }
        """
    );

    public static ReadOnlyMemory<byte> Bytes { get; } = GlbWriter.Write(Piece).Bytes;

    public static GlbFile File { get; } = new(Bytes);

    public static string FrontPart => Piece.Parts.First(part => part.Role == Role.DoorSlab).Id;

    public static string BackPart => Piece.Parts.Single(part => part.Role == Role.Back).Id;

    public static string LeftPart => Side("left");

    public static string RightPart => Side("right");

    private static string Side(string hand) =>
        Piece.Parts.Single(part => part.Role == Role.Side && part.Name.Contains(hand, StringComparison.Ordinal)).Id;
}
