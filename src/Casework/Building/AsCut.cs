using Dryfit.Findings;
using Dryfit.Parameters;

namespace Dryfit.Casework.Building;

/// <summary>The maker's own numbers for parts and units: what was cut, whatever the reckoning says.</summary>
internal sealed class AsCut
{
    private readonly List<Phrase<Func<SourcePlace, Own>>> _phrases = [];
    private readonly HashSet<Phrase<Func<SourcePlace, Own>>> _meanUnits = [];

    public void Add(string phrase, SourcePlace place, Fields fields) =>
        _phrases.Add(
            new Phrase<Func<SourcePlace, Own>>(
                phrase,
                place,
                // Formulas may name what is not known yet: they are read when they are asked for.
                at => new Own(
                    fields.LengthOrNull("length", "length as cut"),
                    fields.LengthOrNull("width", "width as cut"),
                    fields.LengthOrNull("thickness", "thickness as cut"),
                    fields.LengthOrNull("height", "height as cut"),
                    at
                )
            )
        );

    /// <summary>Numbers from outside of the recipe; they count before those of the recipe.</summary>
    public void Add(CutNumbers numbers)
    {
        Figure? Said(Dryfit.Measure.Length? length, string name) =>
            length is { } value ? Figure.Given(name + " as listed", value, new WrittenOrigin(numbers.Place)) : null;
        _phrases.Add(
            new Phrase<Func<SourcePlace, Own>>(
                numbers.Name,
                numbers.Place,
                at => new Own(
                    Said(numbers.Length, "length"),
                    Said(numbers.Width, "width"),
                    Said(numbers.Thickness, "thickness"),
                    null,
                    at
                )
            )
        );
    }

    public bool IsEmpty => _phrases.Count == 0;

    /// <summary>Tells which names there are in the piece, so that a whole name means that one thing alone.</summary>
    public void Know(IReadOnlyCollection<string> names)
    {
        foreach (var phrase in _phrases)
            phrase.Know(names);
    }

    /// <summary>The maker's numbers for a unit, such as a whole door, by its full name; null where there are none.</summary>
    public Own? ForUnit(string fullName) => Find(phrase => phrase.Means(fullName), units: true);

    /// <summary>
    /// The maker's numbers for one part, by its full name. Bands carry the name of their panel, and the front of a box
    /// that of the drawer's own front: a phrase means them only where it says "edging" or "box".
    /// </summary>
    public Own? ForPart(string fullName, Role role)
    {
        var mustSay = role switch
        {
            Role.Edging => "edging",
            Role.DrawerBoxFront => "box",
            _ => null,
        };
        var own = Find(
            phrase =>
                !_meanUnits.Contains(phrase) && phrase.Means(fullName) && (mustSay is null || phrase.Says(mustSay)),
            units: false
        );
        return own is not null && role == Role.DrawerFront ? AcrossTheFront(own) : own;
    }

    /// <summary>The width of a drawer front is from left to right, along its grain, unless its length is said as well.</summary>
    private static Own AcrossTheFront(Own own) =>
        own.Length is null
            ? own with
            {
                Length = own.Width,
                Width = own.Height,
            }
            : own with
            {
                Width = own.Width ?? own.Height,
            };

    /// <summary>Phrases that met nothing in the piece.</summary>
    public IEnumerable<(string Phrase, SourcePlace Place)> Unused =>
        _phrases.Where(phrase => !phrase.Used).Select(phrase => (phrase.Text, phrase.Place));

    private Own? Find(Func<Phrase<Func<SourcePlace, Own>>, bool> means, bool units)
    {
        Phrase<Func<SourcePlace, Own>>? found = null;
        foreach (var phrase in _phrases.Where(means))
        {
            phrase.Used = true;
            if (units)
                _meanUnits.Add(phrase);
            found = phrase; // the last line written has the last word
        }
        return found?.Said(found.Place);
    }
}

/// <summary>The maker's own numbers for one part or unit; null where the reckoning stands.</summary>
internal sealed record Own(Figure? Length, Figure? Width, Figure? Thickness, Figure? Height, SourcePlace Place);

/// <summary>Sizes of one part as it really is.</summary>
/// <param name="Place">Where the maker's own number stands; null where all is as reckoned.</param>
internal sealed record CutSizes(Figure Length, Figure Width, Figure Thickness, SourcePlace? Place);
