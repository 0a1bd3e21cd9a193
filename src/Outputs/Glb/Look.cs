using System.Numerics;
using Dryfit.Casework;

namespace Dryfit.Outputs.Glb;

/// <summary>
/// How a material looks where no finish says otherwise: a quiet tone of the bare stuff. A colour on a screen is no
/// promise; it only lets one tell the timbers of a piece apart.
/// </summary>
/// <param name="Red">Red as screens take it (sRGB), 0 to 255; likewise green and blue.</param>
/// <param name="Opacity">1 for what cannot be seen through.</param>
/// <param name="Roughness">0 for a mirror, 1 for chalk.</param>
internal sealed record Look(byte Red, byte Green, byte Blue, float Opacity, float Roughness)
{
    private static readonly Look White = Opaque(0xEE, 0xEC, 0xE6, 0.45f);

    /// <summary>Whole words of a material's description, the more telling first: "melamine chipboard" is melamine.</summary>
    private static readonly (string Word, Look Look)[] ByWord =
    [
        ("melamine", Opaque(0xE6, 0xE3, 0xDB, 0.45f)),
        ("laminate", Opaque(0xE0, 0xDC, 0xD3, 0.45f)),
        ("mdf", Opaque(0xB9, 0xA1, 0x84, 0.8f)),
        ("fibreboard", Opaque(0xB9, 0xA1, 0x84, 0.8f)),
        ("fiberboard", Opaque(0xB9, 0xA1, 0x84, 0.8f)),
        ("hardboard", Opaque(0x8C, 0x6B, 0x4A, 0.7f)),
        ("chipboard", Opaque(0xC6, 0xAC, 0x85, 0.8f)),
        ("particleboard", Opaque(0xC6, 0xAC, 0x85, 0.8f)),
        ("birch", Opaque(0xE2, 0xCF, 0xA9, 0.6f)),
        ("maple", Opaque(0xE4, 0xD1, 0xAC, 0.55f)),
        ("cherry", Opaque(0xAD, 0x6E, 0x48, 0.55f)),
        ("walnut", Opaque(0x6C, 0x4D, 0x3A, 0.55f)),
        ("oak", Opaque(0xC4, 0xA2, 0x76, 0.6f)),
        ("ash", Opaque(0xD9, 0xC5, 0xA0, 0.6f)),
        ("beech", Opaque(0xD3, 0xAA, 0x80, 0.6f)),
        ("hickory", Opaque(0xCB, 0xA7, 0x7C, 0.6f)),
        ("chestnut", Opaque(0xB8, 0x90, 0x62, 0.6f)),
        ("elm", Opaque(0xB4, 0x8A, 0x60, 0.6f)),
        ("larch", Opaque(0xCB, 0x98, 0x66, 0.6f)),
        ("douglas", Opaque(0xD0, 0x9C, 0x6C, 0.6f)),
        ("redwood", Opaque(0xDE, 0xB6, 0x83, 0.6f)),
        ("redcedar", Opaque(0xB3, 0x7A, 0x55, 0.6f)),
        ("cypress", Opaque(0xD6, 0xB4, 0x83, 0.6f)),
        ("hemlock", Opaque(0xDB, 0xC0, 0x96, 0.6f)),
        ("aspen", Opaque(0xE4, 0xD8, 0xBC, 0.6f)),
        ("cedar", Opaque(0xB3, 0x7A, 0x55, 0.6f)),
        ("fir", Opaque(0xE0, 0xC4, 0x94, 0.6f)),
        ("spruce", Opaque(0xE5, 0xCE, 0xA2, 0.6f)),
        ("pine", Opaque(0xE1, 0xC1, 0x8E, 0.6f)),
        ("softwood", Opaque(0xE1, 0xC1, 0x8E, 0.6f)),
        ("poplar", Opaque(0xCF, 0xC6, 0x9F, 0.6f)),
        ("basswood", Opaque(0xE3, 0xD3, 0xB2, 0.6f)),
        ("lime", Opaque(0xE3, 0xD3, 0xB2, 0.6f)),
        ("alder", Opaque(0xC8, 0x94, 0x69, 0.6f)),
        ("mahogany", Opaque(0x8C, 0x50, 0x38, 0.55f)),
        ("sapele", Opaque(0x90, 0x57, 0x3F, 0.55f)),
        ("teak", Opaque(0xAB, 0x7D, 0x49, 0.6f)),
        ("sycamore", Opaque(0xE5, 0xD6, 0xB9, 0.55f)),
    ];

    /// <summary>The colour as glTF takes it: linear, with opacity.</summary>
    public Vector4 LinearColour => new(Linear(Red), Linear(Green), Linear(Blue), Opacity);

    public bool IsClear => Opacity < 1;

    /// <summary>The same stuff after long use: a shade darker, so that old and new work can be told apart.</summary>
    public Look Aged => this with { Red = Darker(Red), Green = Darker(Green), Blue = Darker(Blue) };

    public static Look Of(Material material)
    {
        switch (material.Kind)
        {
            case MaterialKind.Glass:
                return new(0xD3, 0xE4, 0xE0, 0.25f, 0.05f);
            case MaterialKind.Plastic:
                return new(0xDC, 0xE6, 0xEA, 0.3f, 0.15f);
        }

        var words = material
            .Stuff.Split([' ', '-', ',', '/', '(', ')'], StringSplitOptions.RemoveEmptyEntries)
            .ToHashSet(StringComparer.OrdinalIgnoreCase);
        // White pine is no white board.
        if (material.Kind == MaterialKind.Sheet && words.Contains("white"))
            return White;
        foreach (var (word, look) in ByWord)
        {
            if (words.Contains(word))
                return look;
        }

        return material.Kind == MaterialKind.Sheet ? Opaque(0xD8, 0xC4, 0xA0, 0.7f) : Opaque(0xCE, 0xB0, 0x86, 0.6f);
    }

    /// <summary>The transfer function of IEC 61966-2-1 (sRGB), from screen value to light.</summary>
    private static float Linear(byte screen)
    {
        var value = screen / 255.0;
        return (float)(value <= 0.04045 ? value / 12.92 : Math.Pow((value + 0.055) / 1.055, 2.4));
    }

    private static byte Darker(byte screen) => (byte)(screen * 5 / 6);

    private static Look Opaque(byte red, byte green, byte blue, float roughness) => new(red, green, blue, 1, roughness);
}
