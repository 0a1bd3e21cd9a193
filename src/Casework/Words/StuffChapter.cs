using System.Text;

namespace Dryfit.Casework.Words;

/// <summary>The chapter of the reference page that lists what materials may be made of without more words.</summary>
public static class StuffChapter
{
    public static string Text { get; } = Write();

    private static string Write()
    {
        var text = new StringBuilder(
            """
            ## Known stuff

            These kinds may be named in the short form of a material, such as `hard maple 3/4`; other names for the same stand
            in brackets. Whether a part must follow the grain, and how heavy it is, is known for them. Anything else wants the
            long form with its `density`. Dressed softwood is named by the size it is sold by: `spruce 2x4` measures
            1 1/2 x 3 1/2 in.


            """
        );
        Add(text, "Solid timber", MaterialKind.Solid);
        Add(text, "Sheets", MaterialKind.Sheet);
        Add(text, "Glass", MaterialKind.Glass);
        Add(text, "Plastics", MaterialKind.Plastic);
        return text.ToString();
    }

    private static void Add(StringBuilder text, string heading, MaterialKind kind)
    {
        var names = KnownStuff
            .All.Where(stuff => stuff.Kind == kind)
            .OrderBy(stuff => stuff.Name, StringComparer.Ordinal)
            .Select(stuff =>
                stuff.AlsoCalled.Count == 0 ? stuff.Name : $"{stuff.Name} ({string.Join(", ", stuff.AlsoCalled)})"
            );
        text.Append("- **").Append(heading).Append(":** ").AppendJoin("; ", names).Append(".\n");
    }
}
