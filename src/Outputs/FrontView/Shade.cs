using System.Globalization;
using Dryfit.Casework;
using Dryfit.Measure;

namespace Dryfit.Outputs.FrontView;

/// <summary>White for what is flush with the face of its carcase, greyer the deeper it lies inside.</summary>
internal sealed class Shade
{
    /// <summary>What lies deeper than this behind the face of its carcase is inside it.</summary>
    private const double InsideMm = 60;

    private const double DeepestMm = 600;
    private const int Lightest = 0xF3;
    private const int Darkest = 0xDE;

    private readonly Piece _piece;
    private readonly Dictionary<string, string> _carcaseOfGroup = new(StringComparer.Ordinal);
    private readonly Dictionary<(string Carcase, Rational Degrees), double> _faceOfCarcase = [];

    public Shade(Piece piece, IReadOnlyList<FrontFace> faces)
    {
        _piece = piece;
        var root = piece.Groups.FirstOrDefault(group => group.Parent is null)?.Id;
        foreach (var group in piece.Groups)
        {
            var isTopmost = group.Parent is null || string.Equals(group.Parent, root, StringComparison.Ordinal);
            _carcaseOfGroup[group.Id] = isTopmost ? group.Id : Carcase(group.Parent!);
        }
        foreach (var face in faces)
        {
            var part = piece.Parts[face.Part];
            if (part.Role == Role.Top)
                continue; // a top may stand far over the face
            var carcase = FaceKey(part);
            _faceOfCarcase[carcase] = _faceOfCarcase.TryGetValue(carcase, out var nearest)
                ? Math.Min(nearest, face.Behind)
                : face.Behind;
        }
    }

    /// <summary>The fill of a face, as a colour.</summary>
    public string Of(FrontFace face)
    {
        if (!_faceOfCarcase.TryGetValue(FaceKey(_piece.Parts[face.Part]), out var front))
            return Ink.White;
        var deepMm = _piece.Grid.ToMm(face.Behind - front);
        if (!(deepMm > InsideMm))
            return Ink.White;
        var grey = Lightest - (int)((Lightest - Darkest) * Math.Min(1, deepMm / DeepestMm));
        return string.Create(CultureInfo.InvariantCulture, $"#{grey:x2}{grey:x2}{grey:x2}");
    }

    /// <summary>A diagonal front has a face of its own.</summary>
    private (string Carcase, Rational Degrees) FaceKey(Part part) =>
        (Carcase(part.Group), Turned.Degrees(part.Turn, null));

    /// <summary>The group right under the piece that a group belongs to.</summary>
    private string Carcase(string group) => _carcaseOfGroup.TryGetValue(group, out var carcase) ? carcase : group;
}
