using System.Text.Json;
using Dryfit.Casework;
using Dryfit.Outputs.Glb;
using Dryfit.Outputs.PartsList;

namespace Dryfit.Outputs.Tests.Glb;

/// <summary>What must hold of the 3D file of every starter.</summary>
public class Starters_as_glb
{
    public static TheoryData<string> All => Starters.Names;

    [Theory]
    [MemberData(nameof(All))]
    public async Task The_Khronos_validator_has_nothing_to_say(string starter) =>
        await KhronosValidator.HasNothingToSayOf(GlbWriter.Write(Starters.Get(starter)).Bytes);

    [Theory]
    [MemberData(nameof(All))]
    public void Every_part_is_there_closed_facing_outward_and_with_the_volume_of_the_parts_list(string starter)
    {
        var piece = Starters.Get(starter);
        var file = Read(piece);
        using var list = JsonDocument.Parse(PartsJson.Write(piece).Bytes);
        var rows = list.RootElement.GetProperty("rows").EnumerateArray();
        var volumes = rows.SelectMany(row =>
                row.GetProperty("parts")
                    .EnumerateArray()
                    .Select(part =>
                        (Id: part.GetProperty("id").GetString()!, Volume: row.GetProperty("volumeMm3").GetDouble())
                    )
            )
            .ToDictionary(part => part.Id, part => part.Volume, StringComparer.Ordinal);
        Assert.Equal(
            piece.Parts.Select(part => part.Id).Order(StringComparer.Ordinal),
            file.Parts.Select(node => node.PartId).Order(StringComparer.Ordinal)
        );
        foreach (var node in file.Parts)
        {
            Assert.Equal(1, GlbLint.Volume(file.WorldCorners(node)) * 1e9 / volumes[node.PartId], 1e-6);
            var mesh = file.Meshes[node.Mesh!.Value];
            Assert.Equal(0, GlbLint.OpenEdges(mesh));
            Assert.Equal(0, GlbLint.WrongNormals(mesh));
        }
    }

    [Theory]
    [MemberData(nameof(All))]
    public void Every_part_stands_where_its_solid_does(string starter)
    {
        MustStandAsItsSolidsDo(Starters.Get(starter));
    }

    /// <summary>A mesh is shared by a turn of the board; the box around each part must come out as that of its own solid.</summary>
    internal static void MustStandAsItsSolidsDo(Piece piece)
    {
        var file = Read(piece);
        var parts = piece.Parts.ToDictionary(part => part.Id, StringComparer.Ordinal);
        var (all, allMax) = Reach(piece, piece.Parts);
        foreach (var node in file.Parts)
        {
            var (min, max) = Reach(piece, [parts[node.PartId]]);
            var corners = file.WorldCorners(node).ToList();
            Assert.Equal((min.X - ((all.X + allMax.X) / 2)) / 1000, corners.Min(c => c.X), 1e-6);
            Assert.Equal((max.X - ((all.X + allMax.X) / 2)) / 1000, corners.Max(c => c.X), 1e-6);
            Assert.Equal((min.Z - all.Z) / 1000, corners.Min(c => c.Y), 1e-6);
            Assert.Equal((max.Z - all.Z) / 1000, corners.Max(c => c.Y), 1e-6);
            Assert.Equal((((all.Y + allMax.Y) / 2) - max.Y) / 1000, corners.Min(c => c.Z), 1e-6);
            Assert.Equal((((all.Y + allMax.Y) / 2) - min.Y) / 1000, corners.Max(c => c.Z), 1e-6);
        }
    }

    [Theory]
    [MemberData(nameof(All))]
    public void It_stands_on_the_floor_at_the_size_of_furniture_and_weighs_less_than_a_megabyte(string starter)
    {
        var piece = Starters.Get(starter);
        var file = Read(piece);
        var corners = file.Parts.SelectMany(file.WorldCorners).ToList();
        Assert.Equal(0, corners.Min(corner => corner.Y));
        Assert.InRange(corners.Max(corner => corner.Y), 0.3, 3);
        Assert.InRange(corners.Max(corner => corner.X), 0.2, 3);
        Assert.InRange(GlbWriter.Write(piece).Bytes.Length, 1, 1_000_000);
    }

    [Theory]
    [MemberData(nameof(All))]
    public void No_faces_of_different_parts_coincide(string starter) =>
        Assert.Empty(GlbLint.CoincidentFaces(Read(Starters.Get(starter))));

    [Theory]
    [MemberData(nameof(All))]
    public void Every_front_hangs_on_its_pivot(string starter)
    {
        var piece = Starters.Get(starter);
        var moving = Read(piece)
            .Nodes.Where(node => node.Extras.TryGetProperty("motion", out _))
            .Select(node => node.Extras.GetProperty("group").GetString());
        Assert.Equal(
            piece.Fronts.Select(front => front.Group).Order(StringComparer.Ordinal),
            moving.Order(StringComparer.Ordinal)
        );
    }

    [Theory]
    [MemberData(nameof(All))]
    public void Built_twice_the_bytes_are_the_same(string starter)
    {
        var again = Starters.Build(starter);
        Assert.Equal(GlbWriter.Write(Starters.Get(starter)).Bytes.Span, GlbWriter.Write(again).Bytes.Span);
        Assert.Equal(PartsCsv.Write(Starters.Get(starter)).Bytes.Span, PartsCsv.Write(again).Bytes.Span);
        Assert.Equal(PartsJson.Write(Starters.Get(starter)).Bytes.Span, PartsJson.Write(again).Bytes.Span);
    }

    private static GlbFile Read(Piece piece) => new(GlbWriter.Write(piece).Bytes);

    /// <summary>The box around the solids of parts in their place, millimetres of the piece.</summary>
    private static (Place Min, Place Max) Reach(Piece piece, IReadOnlyList<Part> parts)
    {
        var corners = parts
            .SelectMany(part => part.Solid.Vertices.Select(part.Placed.Frame.ToWorld))
            .Select(p => new Place(piece.Grid.ToMm(p.X), piece.Grid.ToMm(p.Y), piece.Grid.ToMm(p.Z)))
            .ToList();
        return (
            new(corners.Min(p => p.X), corners.Min(p => p.Y), corners.Min(p => p.Z)),
            new(corners.Max(p => p.X), corners.Max(p => p.Y), corners.Max(p => p.Z))
        );
    }
}
