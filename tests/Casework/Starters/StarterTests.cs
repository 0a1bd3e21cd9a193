using Dryfit.Casework.Tests.Kit;

namespace Dryfit.Casework.Tests.Starters;

/// <summary>The pieces that ship with the tool.</summary>
public sealed class StarterTests
{
    [Theory]
    [InlineData("studio-cupboard")]
    [InlineData("utility-room")]
    [InlineData("alcove-chest")]
    [InlineData("pottery-dresser")]
    [InlineData("writing-cabinet")]
    public void Starter_is_sound_as_it_ships(string name)
    {
        Built.From(Built.Starter(name)).MustBeSound();
    }
}
