using Dryfit.Casework.Tests.Kit;

namespace Dryfit.Casework.Tests.Words;

public sealed class NameCheckTests
{
    [Fact]
    public void Names_that_nothing_stands_for_come_out_together_with_all_other_errors()
    {
        var errors = Built.ErrorsOf(
            """
            piece: P
            units: mm
            materials: { body: mapel 18 }
            carcases:
              base:
                size: [600, 700, 300]
                edging: birsh
                stand on: { plinth: 80 }
              upper: { on: bse, size: [600, 700, 300] }
            """
        );
        Assert.Equal(
            ["maple", null, "stands on", "base"],
            errors.OrderBy(e => e.Place!.Line).Select(e => e.Suggestion)
        );
    }
}
