using Dryfit.Findings;
using Dryfit.Parameters;

namespace Dryfit.Casework.Building;

/// <summary>The maker's own numbers for parts and units: what was cut, whatever the reckoning says.</summary>
internal sealed class AsCut
{
    private readonly List<Entry> _entries = [];

    private sealed class Entry
    {
        public required string Phrase { get; init; }

        public required Namesake Means { get; init; }

        public required SourcePlace Place { get; init; }

        public required Fields Fields { get; init; }

        /// <summary>True where the phrase is the whole name of something: then it means nothing else.</summary>
        public bool IsWholeName { get; set; }

        public bool MeansUnits { get; set; }

        public bool Used { get; set; }
    }

    public void Add(string phrase, SourcePlace place, Fields fields) =>
        _entries.Add(
            new Entry
            {
                Phrase = phrase,
                Means = new Namesake(phrase),
                Place = place,
                Fields = fields,
            }
        );

    public bool IsEmpty => _entries.Count == 0;

    /// <summary>Tells which names there are in the piece, so that a whole name means that one thing alone.</summary>
    public void Know(IReadOnlyCollection<string> names)
    {
        foreach (var entry in _entries)
            entry.IsWholeName = names.Any(entry.Means.IsWhole);
    }

    /// <summary>The maker's numbers for a unit, such as a whole door, by its full name; null where there are none.</summary>
    public Own? ForUnit(string fullName) => Find(e => Fits(e, fullName), units: true);

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
            e => !e.MeansUnits && Fits(e, fullName) && (mustSay is null || e.Means.Says(mustSay)),
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
        _entries.Where(e => !e.Used).Select(e => (e.Phrase, e.Place));

    private static bool Fits(Entry entry, string name) =>
        entry.IsWholeName ? entry.Means.IsWhole(name) : entry.Means.IsIn(name);

    private Own? Find(Func<Entry, bool> fits, bool units)
    {
        Entry? found = null;
        foreach (var entry in _entries.Where(fits))
        {
            entry.Used = true;
            entry.MeansUnits |= units;
            found = entry; // the last line written has the last word
        }
        return found is null
            ? null
            : new Own(
                found.Fields.LengthOrNull("length", "length as cut"),
                found.Fields.LengthOrNull("width", "width as cut"),
                found.Fields.LengthOrNull("thickness", "thickness as cut"),
                found.Fields.LengthOrNull("height", "height as cut"),
                found.Place
            );
    }
}

/// <summary>The maker's own numbers for one part or unit; null where the reckoning stands.</summary>
internal sealed record Own(Figure? Length, Figure? Width, Figure? Thickness, Figure? Height, SourcePlace Place);

/// <summary>Sizes of one part as it really is.</summary>
/// <param name="Place">Where the maker's own number stands; null where all is as reckoned.</param>
internal sealed record CutSizes(Figure Length, Figure Width, Figure Thickness, SourcePlace? Place);
