using Dryfit.Measure;
using Dryfit.Parameters;

namespace Dryfit.Casework.Tests.Fronts;

/// <summary>Reasons of a figure as a line of text, one level down: <c>door width - stile - stile</c>.</summary>
internal static class Sums
{
    /// <summary>The sum behind the outermost names of a figure.</summary>
    public static string Of(Figure figure)
    {
        while (figure.Reason is NamedReason { Of: { Reason: NamedReason } inner })
            figure = inner;
        return figure.Reason is NamedReason named ? $"{named.Name} = {Terms(named.Of)}" : Terms(figure);
    }

    private static string Terms(Figure figure) =>
        figure.Reason switch
        {
            GivenReason given => given.Name,
            NamedReason named => named.Name,
            SumReason sum => $"{Terms(sum.A)} {(sum.Negated ? "-" : "+")} {Terms(sum.B)}",
            DividedReason divided => $"({Terms(divided.A)}) / {divided.Divisor}",
            TimesReason times => $"({Terms(times.A)}) x {times.Factor}",
            RoundedReason rounded =>
                $"({Terms(rounded.Of)}) to {LengthFormat.For(LengthUnit.Inch).WriteWithUnit(rounded.Step)}",
            ChosenReason chosen => $"{chosen.How} {string.Join(", ", chosen.Among.Select(Terms))}",
            _ => figure.Reason.ToString(),
        };
}
