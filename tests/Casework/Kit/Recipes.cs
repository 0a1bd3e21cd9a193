namespace Dryfit.Casework.Tests.Kit;

/// <summary>Short recipes of one carcase or a few.</summary>
internal static class Recipes
{
    /// <summary>A piece in millimetres: pine 18 with backs of plywood 6.5.</summary>
    /// <param name="carcases">Lines of the carcases, each a name and a flow mapping, not indented.</param>
    /// <param name="rest">Other sections, not indented.</param>
    public static string Metric(string carcases, string rest = "", string materials = "") =>
        $"""
            piece: Test piece
            units: mm
            materials:
              body: pine 18
              backs: birch plywood 6.5
            {Indented(materials)}carcases:
            {Indented(carcases)}{rest}
            """;

    /// <summary>A piece in inches: hard maple 3/4 with backs of plywood 1/4.</summary>
    public static string Inch(string carcases, string rest = "", string materials = "") =>
        $"""
            piece: Test piece
            units: in
            materials:
              body: hard maple 3/4
              backs: birch plywood 1/4
            {Indented(materials)}carcases:
            {Indented(carcases)}{rest}
            """;

    private static string Indented(string lines) =>
        string.Concat(lines.Split('\n').Where(l => l.Length > 0).Select(l => $"  {l}\n"));
}
