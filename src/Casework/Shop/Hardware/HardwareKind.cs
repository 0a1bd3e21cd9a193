using Dryfit.Recipe;

namespace Dryfit.Casework;

/// <summary>A kind of thing that is bought, with the figures that its maker's sheet gives of it.</summary>
public sealed class HardwareKind
{
    private static readonly Field CalledField = new(
        "called",
        new TextShape(),
        "How it is asked for in the lists.",
        Default: "its name here"
    );

    /// <param name="name">As it is asked for, in the singular: "side slide".</param>
    /// <param name="doc">One or two sentences a maker reads.</param>
    /// <param name="example">A family of it as the shop file writes it.</param>
    /// <param name="figures">Its figures with the house rules behind them.</param>
    /// <param name="besides">What a family may say besides, with no house rule behind it.</param>
    public HardwareKind(
        string name,
        string doc,
        string example,
        IReadOnlyList<HardwareFigure> figures,
        params IReadOnlyList<Field> besides
    )
    {
        Name = name;
        Figures = figures;
        Shape = new RecordShape(
            $"hardware: {name}",
            doc,
            example,
            () => [CalledField, .. figures.Select(FieldOf), .. besides]
        );
    }

    public string Name { get; }

    /// <summary>Its key in the shop file's <c>hardware</c>: "side slides".</summary>
    public string Section => Name + "s";

    /// <summary>Its figures; the house rules behind them are the family that is used where none is named.</summary>
    public IReadOnlyList<HardwareFigure> Figures { get; }

    /// <summary>What a family of it may say.</summary>
    public RecordShape Shape { get; }

    private static Field FieldOf(HardwareFigure figure) =>
        new(figure.Key, figure.Rule.Shape, figure.Rule.Doc, Default: $"the house rule {figure.Rule.Name}");
}

/// <summary>One figure of a family.</summary>
/// <param name="Key">Its key in the family: <c>clearance</c>.</param>
/// <param name="Rule">The house rule that stands where the family does not say it.</param>
public sealed record HardwareFigure(string Key, Rule Rule);
