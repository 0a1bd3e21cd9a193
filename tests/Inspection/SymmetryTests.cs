using CsCheck;
using Dryfit.Findings;

namespace Dryfit.Inspection.Tests;

public sealed class SymmetryTests
{
    private static readonly decimal[] Slips = [0, 0, 0, 0.1m, -0.1m, 0.4m, -0.4m, 1.3m, -1.3m, 5, -5];

    private static readonly Gen<decimal> Slip = Gen.Int[0, Slips.Length - 1].Select(i => Slips[i]);

    private static readonly Gen<Bench> Cupboards =
        from left in Slip
        from bottom in Slip
        from width in Slip
        from height in Slip
        from y in Slip
        from panel in Slip
        from off in Slip
        select new Cupboard
        {
            DoorLeft = 2 + left,
            DoorBottom = 2 + bottom,
            DoorWidth = 396 + width,
            DoorHeight = 596 + height,
            DoorY = y,
            PanelWidth = 292 + panel,
            PanelOff = off,
        }.OnBench();

    private static readonly Gen<Bench> Chests =
        from left in Slip
        from right in Slip
        from bottom in Slip
        from top in Slip
        from back in Slip
        select new Chest
        {
            BoxLeft = 13 + left,
            BoxRight = 387 + right,
            BoxBottom = 20 + bottom,
            BoxTop = 180 + (2 * top),
            BoxBack = 270 + back,
        }.OnBench();

    private static readonly Gen<Bench> Runs =
        from left in Slip
        from right in Slip
        from top in Slip
        select new Run
        {
            LeftDoorLeft = 1.5m + left,
            LeftDoorRight = 298.5m + right,
            DoorTop = 500 + top,
        }.OnBench();

    private static readonly Gen<Bench> Pieces = Gen.OneOf(Cupboards, Chests, Runs);

    [Fact]
    public void Piece_in_a_mirror_has_mirrored_findings() =>
        Pieces.Sample(
            bench =>
            {
                var plain = bench.Inspect().Findings;
                var mirrored = bench.Mirrored().Inspect().Findings;
                Assert.Equal(Sorted(plain.Select(f => Told(f, -1))), Sorted(mirrored.Select(f => Told(f, 1))));
            },
            iter: 60
        );

    [Fact]
    public void Piece_elsewhere_in_the_room_has_the_same_findings() =>
        Gen.Select(Pieces, Gen.Int[-5000, 5000], Gen.Int[-5000, 5000], Gen.Int[-5000, 5000])
            .Sample(
                (bench, x, y, z) =>
                {
                    var here = bench.Inspect().Findings;
                    var there = bench.Moved(x / 10m, y / 10m, z / 10m).Inspect().Findings;
                    Assert.Equal(here.Select(Plain), there.Select(Plain));
                    Assert.All(
                        here.Zip(there),
                        pair =>
                        {
                            Assert.Equal(pair.First.Where!.From.XMm + (x / 10.0), pair.Second.Where!.From.XMm, 1e-6);
                            Assert.Equal(pair.First.Where.To.ZMm + (z / 10.0), pair.Second.Where.To.ZMm, 1e-6);
                        }
                    );
                },
                iter: 60
            );

    private static string Plain(Finding finding) =>
        $"{finding.Told()} {finding.Wanted} {finding.Remedy} {string.Join(' ', finding.Parts)}";

    /// <summary>All that has no left and right in it, and the place with X turned round where that is asked for.</summary>
    private static string Told(Finding finding, int way)
    {
        var (from, to) = (finding.Where!.From, finding.Where.To);
        // A line that is drawn along the axes has no first end.
        var ends = new[] { (X: from.XMm * way, Z: from.ZMm), (X: to.XMm * way, Z: to.ZMm) }
            .Select(end => FormattableString.Invariant($"{end.X + 0.0:0.000},{end.Z + 0.0:0.000}"))
            .Order(StringComparer.Ordinal);
        // A loose panel is shown at its tightest edge, and at either where both are alike.
        var place = new LooseFit().Kinds.Contains(finding.Kind) ? "" : string.Join(' ', ends);
        return $"{finding.Kind.Id} {finding.Measured} {finding.Wanted} {place}";
    }

    private static List<string> Sorted(IEnumerable<string> lines) => [.. lines.Order(StringComparer.Ordinal)];
}
