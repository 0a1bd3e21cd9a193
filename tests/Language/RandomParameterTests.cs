using System.Globalization;
using Dryfit.Casework;
using Dryfit.Findings;
using Dryfit.Inspection;
using Dryfit.Kit;
using Dryfit.Parameters;
using Dryfit.Solids;

namespace Dryfit.Language.Tests;

/// <summary>
/// Every recipe that ships or stands beside these tests, under parameters drawn within its own ranges: it becomes
/// sound parts without one stop, the same each time, or says clearly why it cannot be built.
/// DRYFIT_FUZZ set to a number tries that many draws of each recipe instead of the few fixed ones.
/// </summary>
public sealed class RandomParameterTests
{
    private const int FewDraws = 6;

    public static TheoryData<string> Recipes { get; } =
    [
        .. Shipped
            .RecipeFolders.SelectMany(folder => Shipped.FilesIn(folder, "*.dryfit.yaml"))
            .Select(f => Path.GetFileName(f)),
    ];

    [Theory]
    [MemberData(nameof(Recipes))]
    public void Within_its_ranges_a_recipe_becomes_sound_parts_or_says_why_not(string file)
    {
        var recipe = Shipped.Read(file, [.. Shipped.RecipeFolders]);
        var files = Shipped.Beside(file, [.. Shipped.RecipeFolders]);
        var (draws, built) = (Draws, 0);
        for (var seed = 0; seed < draws; seed++)
        {
            // The first draw is the recipe as it stands.
            IReadOnlyList<Setting> drawn = seed == 0 ? [] : ParameterDraw.From(recipe, seed);
            var said = $"{file} with {string.Join(", ", drawn.Select(d => $"{d.Name} = {d.Text}"))}";
            var result = Design.Build(recipe, null, new DesignOptions(drawn, null) { Files = files });
            if (result.Value is { } piece)
            {
                built++;
                IsSolid(piece, said);
                // What the maker has cut already only fits the piece it was cut for.
                if (seed == 0 || recipe["as cut"] is null)
                    FitsTogether(piece, said);
                if (seed == 1)
                    IsTheSame(
                        piece,
                        Design.Build(recipe, null, new DesignOptions(drawn, null) { Files = files }).Value!
                    );
            }
            else
            {
                Assert.NotEmpty(result.Errors);
                Assert.All(result.Errors, error => IsClear(error, said));
            }
        }
        Assert.True(built * 2 > draws, $"{file} could be built {built} times of {draws}: its ranges are too wide.");
    }

    private static int Draws =>
        int.TryParse(Environment.GetEnvironmentVariable("DRYFIT_FUZZ"), CultureInfo.InvariantCulture, out var many)
            ? many
            : FewDraws;

    private static void IsSolid(Piece piece, string said)
    {
        Assert.All(piece.Parts, part => Assert.True(IsClosed(part.Solid), $"{said}: {part.Name} is open"));
        Assert.All(
            piece.Parts,
            part => Assert.True(part.Solid.PieceCount == 1, $"{said}: {part.Name} falls into {part.Solid.PieceCount}")
        );
    }

    private static void FitsTogether(Piece piece, string said)
    {
        var stops = Inspector
            .Inspect(piece)
            .Findings.Where(f => f.Kind.Severity == Severity.Stop && f.AcceptedBecause is null)
            .ToList();
        Assert.True(
            stops.Count == 0,
            $"{said}: {string.Join('\n', stops.Select(s => $"{s.Kind.Id}: {s.Message} [{string.Join(", ", s.Parts)}]"))}"
        );
    }

    private static void IsClear(InputError error, string said)
    {
        Assert.True(error.Message.Length > 20 && error.Message.EndsWith('.'), $"{said}: {error.Message}");
        Assert.True(error.Place is { Line: > 0 }, $"{said}: {error.Message}");
    }

    private static void IsTheSame(Piece one, Piece other)
    {
        Assert.Equal(one.Parts.Select(Told), other.Parts.Select(Told));
        Assert.Equal(one.Joints, other.Joints);
        Assert.All(
            one.Parts.Zip(other.Parts),
            pair => Assert.Equal(pair.First.Solid.Vertices, pair.Second.Solid.Vertices)
        );

        static string Told(Part part) =>
            $"{part.Id} {part.Length.Length} {part.Width.Length} {part.Thickness.Length} {part.Place}";
    }

    /// <summary>Each edge of a triangle is met by one that runs the other way.</summary>
    private static bool IsClosed(Solid solid)
    {
        var open = new HashSet<(int From, int To)>();
        for (var t = 0; t < solid.Triangles.Count; t += 3)
        {
            for (var n = 0; n < 3; n++)
            {
                var edge = (solid.Triangles[t + n], solid.Triangles[t + ((n + 1) % 3)]);
                if (!open.Remove((edge.Item2, edge.Item1)) && !open.Add(edge))
                    return false;
            }
        }
        return open.Count == 0;
    }
}
