using System.Text.Json.Nodes;
using Dryfit.Casework;
using Dryfit.Measure;
using Dryfit.Outputs.Text;

namespace Dryfit.Outputs.Glb;

/// <summary>What a reader of the file may ask a node: which part or group of the piece it is.</summary>
internal static class NodeExtras
{
    public static JsonObject Of(Piece piece)
    {
        var extras = new JsonObject { ["piece"] = PlainText.Clean(piece.Name) };
        if (piece.Note is { } note)
            extras["note"] = PlainText.Clean(note);
        return extras;
    }

    public static JsonObject Of(PieceTree unit)
    {
        var extras = new JsonObject
        {
            ["group"] = unit.Group.Id,
            ["name"] = PlainText.Clean(unit.Group.Name),
            ["kind"] = Words.Of(unit.Group.Kind),
        };
        if (unit.Front is { } front)
            extras["motion"] = Words.Of(front.Motion);
        return extras;
    }

    /// <summary>A part: its blank is length along the grain, width and thickness, in the maker's unit and in mm.</summary>
    public static JsonObject Of(Part part, LengthFormat format)
    {
        Length[] blank = [part.Length.Length, part.Width.Length, part.Thickness.Length];
        return new JsonObject
        {
            ["part"] = part.Id,
            ["name"] = PlainText.Clean(part.Name),
            ["role"] = Words.Of(part.Role),
            ["material"] = PlainText.Clean(part.Material.Name),
            ["stuff"] = PlainText.Clean(part.Material.Stuff),
            ["blank"] = string.Join(" x ", blank.Select(format.WriteWithUnit)),
            ["blankMm"] = new JsonArray([.. blank.Select(size => (JsonNode)size.ToMillimetres())]),
        };
    }
}
