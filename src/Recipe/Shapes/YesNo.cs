namespace Dryfit.Recipe;

/// <summary>Reads yes and no.</summary>
public static class YesNo
{
    /// <summary>True for yes, true or nothing at all; false for no or false; null for anything else.</summary>
    public static bool? Read(Scalar scalar) =>
        scalar.Text switch
        {
            "" or "yes" or "true" => true,
            "no" or "false" => false,
            _ => null,
        };
}
