using Dryfit.Casework.Building;
using Dryfit.Casework.Words;
using Dryfit.Findings;
using Dryfit.Parameters;

namespace Dryfit.Casework.Boards;

/// <summary>What a name of the recipe means to a loose board: a part, several in one plane, or a whole carcase.</summary>
/// <param name="Name">As it is called in sums.</param>
/// <param name="Extent">The box of it, as reckoned.</param>
/// <param name="Parts">The parts that may be tied to.</param>
/// <param name="Within">The carcase it is, or is a part of; nothing for what stands by itself.</param>
/// <param name="Home">The group of that carcase, where it stands at an angle in plan; null where all is square.</param>
internal sealed record Found(
    string Name,
    Extent Extent,
    IReadOnlyList<PartDraft> Parts,
    IReadOnlyList<Body> Within,
    GroupDraft? Home = null
);

/// <summary>Finds what the names in the places of loose boards mean.</summary>
/// <param name="boards">The loose boards, to be made when one is asked for.</param>
internal sealed class FaceFinder(
    PieceBuilder piece,
    IReadOnlyList<(Body Body, GroupDraft Group)> bodies,
    IReadOnlyList<string> boards,
    Func<string, SourcePlace, PartDraft> board
)
{
    private const int MostNamed = 8;

    public Found Find(FaceSaid face)
    {
        if (piece.Scope.WordAt(face.Said, face.Name) is { } word)
            return FindNamed(face with { Name = word }, inner: null);
        return FindNamed(face, piece.Scope.InnerOf(face.Said));
    }

    /// <param name="inner">The names of the own word whose file says it; null for the recipe itself.</param>
    private Found FindNamed(FaceSaid face, InnerNames? inner)
    {
        if (inner is not null && Inside(inner.Spell(face.Name), face, inner.Name) is { } within)
            return within;
        if (string.Equals(face.Name, "floor", StringComparison.OrdinalIgnoreCase))
            return Floor();
        if (Exactly(boards, face.Name) is { } own)
            return Of(board(own, face.Place));
        foreach (var (body, group) in bodies)
        {
            if (string.Equals(body.Name, face.Name, StringComparison.OrdinalIgnoreCase))
                return new Found(
                    body.Name,
                    body.Envelope,
                    [.. piece.Parts.Where(p => BelongsTo(p, group))],
                    [body],
                    HomeOf(group)
                );
        }
        if (piece.Parts.FirstOrDefault(p => IsCalled(p.Name, face.Name)) is { } part)
            return Of(part);
        return ByWords(face);
    }

    /// <summary>What an own word means by a name of its own; null where it has none of that name.</summary>
    private Found? Inside(string spelt, FaceSaid face, string use)
    {
        foreach (var name in (string[])[spelt, $"{use} {face.Name}"])
        {
            var isOne =
                Exactly(boards, name) is not null
                || bodies.Any(b => IsCalled(b.Body.Name, name))
                || piece.Parts.Any(p => IsCalled(p.Name, name));
            if (isOne && (name != face.Name || IsOf(use, name)))
                return FindNamed(face with { Name = name }, inner: null);
        }
        var words = new Namesake($"{use} {face.Name}");
        var within = piece
            .Parts.Select(p => p.Name)
            .Concat(boards)
            .Where(n => IsOf(use, n) && words.IsIn(n))
            .Distinct(StringComparer.Ordinal)
            .ToList();
        return within.Count == 1 ? FindNamed(face with { Name = within[0] }, inner: null) : null;
    }

    private static bool IsOf(string use, string name) =>
        name.StartsWith(use, StringComparison.OrdinalIgnoreCase)
        && (name.Length == use.Length || name[use.Length] == ' ');

    private Found ByWords(FaceSaid face)
    {
        var words = new Namesake(face.Name);
        var unmade = boards.Where(words.IsIn).ToList();
        var parts = piece
            .Parts.Where(p => words.IsIn(p.Name) && !boards.Contains(p.Name, StringComparer.Ordinal))
            .ToList();
        if (unmade.Count == 1 && parts.Count == 0)
            return Of(board(unmade[0], face.Place));
        if (unmade.Count == 0 && parts.Count == 1)
            return Of(parts[0]);
        IReadOnlyList<string> names = [.. parts.Select(p => p.Name), .. unmade];
        throw new CannotBuildException(
            names.Count == 0
                ? new InputError(
                    $"There is no part, board or carcase called {Excerpt.Quote(face.Name)}.",
                    face.Place,
                    "words from the name of a part",
                    NearestWord.To(face.Name, AllNames())
                )
                : new InputError(
                    $"{Excerpt.Quote(face.Name)} may be several parts: {string.Join(", ", names.Take(MostNamed))}{(names.Count > MostNamed ? " and more" : "")}.",
                    face.Place,
                    "words that only one of them has"
                )
        );
    }

    private IEnumerable<string> AllNames() =>
        bodies.Select(b => b.Body.Name).Concat(boards).Concat(piece.Parts.Select(p => p.Name));

    private Found Floor()
    {
        var level = bodies.Count == 0 ? Measure.Length.Zero : bodies.Min(b => b.Body.Envelope.Min.Z);
        var corner = new Point(Measure.Length.Zero, Measure.Length.Zero, level);
        return new Found("floor", new Extent(corner, corner), [], []);
    }

    private Found Of(PartDraft part) =>
        new(
            part.Name,
            part.Reckoned,
            [part],
            [.. bodies.Where(b => BelongsTo(part, b.Group)).Select(b => b.Body)],
            HomeOf(part.Group)
        );

    /// <summary>The outermost group that is turned as this one is.</summary>
    private static GroupDraft? HomeOf(GroupDraft group)
    {
        if (group.Turn is null)
            return null;
        while (group.Parent is { } parent && parent.Turn == group.Turn)
            group = parent;
        return group;
    }

    /// <summary>Parts of a carcase that stay where they are: not those of its doors and drawers.</summary>
    private static bool BelongsTo(PartDraft part, GroupDraft body)
    {
        for (var group = part.Group; group is not null; group = group.Parent)
        {
            if (group == body)
                return true;
            if (group.Kind is GroupKind.Door or GroupKind.Drawer)
                return false;
        }
        return false;
    }

    private static string? Exactly(IReadOnlyList<string> names, string said) =>
        names.FirstOrDefault(name => IsCalled(name, said));

    private static bool IsCalled(string name, string said) =>
        string.Equals(name, said, StringComparison.OrdinalIgnoreCase);
}
