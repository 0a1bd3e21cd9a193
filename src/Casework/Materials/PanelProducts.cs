namespace Dryfit.Casework;

/// <summary>Sheet goods. One density stands for all thicknesses; the source says which it is.</summary>
internal static class PanelProducts
{
    private const string BirchSource =
        "birch plywood data sheet (distributor): 685 kg/m3 at 18 mm, 660 to 710 over 4 to 30 mm";

    private const string PlywoodSource =
        "middle of the range of specific gravity 0.4 to 0.6, Wood Handbook FPL-GTR-190 (2010), Table 12-1, at 12 %";

    private const string ParticleboardSource =
        "particleboard data sheet, EN 312 type P2: 650 kg/m3 at 18 and 19 mm, 600 to 700 over 10 to 38 mm";

    private const string MelamineSource = ParticleboardSource + "; the paper faces are not counted";

    private const string MdfSource =
        "48 lb/ft3 (from memory); specific gravity 0.7 to 0.9, Wood Handbook FPL-GTR-190 (2010), Table 12-1";

    private const string HardboardSource =
        "middle of the range of specific gravity 0.9 to 1.0, Wood Handbook FPL-GTR-190 (2010), Table 12-1";

    private const string TemperedSource =
        "62 lb/ft3 (from memory); specific gravity 0.9 to 1.0, Wood Handbook FPL-GTR-190 (2010), Table 12-1";

    private const string OsbSource =
        "middle of the range of specific gravity 0.5 to 0.8, Wood Handbook FPL-GTR-190 (2010), Table 12-1";

    public static IReadOnlyList<Stuff> All { get; } =
    [
        Grained("birch plywood", 685, BirchSource, "baltic birch", "baltic birch plywood", "birch ply"),
        Grained(
            "plywood",
            560,
            PlywoodSource,
            "ply",
            "softwood plywood",
            "fir plywood",
            "hardwood plywood",
            "veneer core plywood",
            "oak plywood",
            "maple plywood",
            "cherry plywood",
            "walnut plywood",
            "ash plywood"
        ),
        Grained("oriented strand board", 650, OsbSource, "osb", "oriented strandboard"),
        Plain(
            "mdf",
            770,
            MdfSource,
            "medium density fibreboard",
            "medium density fiberboard",
            "fibreboard",
            "fiberboard"
        ),
        Grained("veneered mdf", 770, MdfSource, "mdf veneered"),
        Plain("particleboard", 650, ParticleboardSource, "particle board", "chipboard"),
        Grained("veneered particleboard", 650, ParticleboardSource, "veneered chipboard"),
        Plain(
            "melamine board",
            650,
            MelamineSource,
            "melamine",
            "white melamine",
            "melamine faced chipboard",
            "melamine faced particleboard",
            "mfc"
        ),
        Grained("woodgrain melamine board", 650, MelamineSource, "woodgrain melamine"),
        Plain("hardboard", 950, HardboardSource, "standard hardboard"),
        Plain("tempered hardboard", 1000, TemperedSource),
    ];

    private static Stuff Grained(string name, double densityKgPerM3, string source, params string[] alsoCalled) =>
        new(name, MaterialKind.Sheet, HasGrain: true, densityKgPerM3, source, alsoCalled);

    private static Stuff Plain(string name, double densityKgPerM3, string source, params string[] alsoCalled) =>
        new(name, MaterialKind.Sheet, HasGrain: false, densityKgPerM3, source, alsoCalled);
}
