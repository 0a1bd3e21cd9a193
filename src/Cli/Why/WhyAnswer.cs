using Dryfit.Casework;
using Dryfit.Parameters.Why;

namespace Dryfit.Cli;

/// <summary>The answer to a question about a part, on a terminal.</summary>
internal sealed class WhyAnswer(Piece piece, string recipe, Surroundings surroundings)
{
    private readonly Paint _paint = new(surroundings.OutHasColour);

    /// <summary>All parts, to ask about.</summary>
    public void WriteParts()
    {
        var (id, name) = (piece.Parts.Max(p => p.Id.Length), piece.Parts.Max(p => p.Name.Length));
        foreach (var part in piece.Parts)
        {
            var sizes = new[] { part.Length, part.Width, part.Thickness }.Select(f => piece.Format.Write(f.Length));
            surroundings.Out.WriteLine(
                $"{part.Id.PadRight(id)}   {part.Name.PadRight(name)}   {string.Join(" x ", sizes)}"
            );
        }
    }

    public void Write(PartQuestion question)
    {
        foreach (var (name, figure) in question.Sizes)
        {
            if (name != question.Sizes[0].Name)
                surroundings.Out.WriteLine();
            surroundings.Out.WriteLine(_paint.Bold($"{question.Part.Name}, {name}"));
            surroundings.Out.WriteLine();
            surroundings.Out.Write(WhyText.Write(figure, piece.Format, recipeFile: recipe));
        }
    }
}
