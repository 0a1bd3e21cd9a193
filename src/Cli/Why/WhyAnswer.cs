using Dryfit.Casework;
using Dryfit.Parameters.Why;

namespace Dryfit.Cli;

/// <summary>The answer to a question about sizes, on a terminal.</summary>
internal sealed class WhyAnswer(Piece piece, string recipe, Surroundings surroundings)
{
    private readonly Paint _paint = new(surroundings.OutHasColour);

    /// <summary>All parts, then all wholes, to ask about.</summary>
    public void WriteParts()
    {
        var things = Sized.All(piece);
        var (id, name) = (things.Max(t => t.Id.Length), things.Max(t => t.Name.Length));
        foreach (var thing in things)
        {
            var sizes = thing.Sizes.Take(3).Select(size => piece.Format.Write(size.Figure.Length));
            surroundings.Out.WriteLine(
                $"{thing.Id.PadRight(id)}   {thing.Name.PadRight(name)}   {string.Join(" x ", sizes)}"
            );
        }
    }

    public void Write(SizeQuestion question)
    {
        foreach (var (name, figure) in question.Sizes)
        {
            if (name != question.Sizes[0].Name)
                surroundings.Out.WriteLine();
            surroundings.Out.WriteLine(_paint.Bold($"{question.Asked.Name}, {name}"));
            surroundings.Out.WriteLine();
            surroundings.Out.Write(WhyText.Write(figure, piece.Format, recipeFile: recipe));
        }
    }
}
