using Dryfit.Outputs.Glb;
using Dryfit.Outputs.Tests.Pieces;

namespace Dryfit.Outputs.Tests.Glb;

/// <summary>The 3D file of what stands at an angle in plan.</summary>
public class Turned_as_glb
{
    [Theory]
    [InlineData("left: 30")]
    [InlineData("right: 45, about: right rear corner")]
    [InlineData("left: 90")]
    public void Every_part_stands_where_its_solid_does(string turned) =>
        Starters_as_glb.MustStandAsItsSolidsDo(Angles.Corner(turned));

    [Fact]
    public async Task The_Khronos_validator_has_nothing_to_say() =>
        await KhronosValidator.HasNothingToSayOf(GlbWriter.Write(Angles.Corner("left: 30")).Bytes);

    [Fact]
    public async Task A_part_that_leans_stands_where_its_solid_does()
    {
        var piece = Angles.Splined();
        Starters_as_glb.MustStandAsItsSolidsDo(piece);
        await KhronosValidator.HasNothingToSayOf(GlbWriter.Write(piece).Bytes);
    }

    [Fact]
    public void Drawers_slide_and_doors_turn_in_the_frame_of_their_carcase()
    {
        var file = new GlbFile(GlbWriter.Write(Angles.Corner("left: 30")).Bytes);
        // A drawer slides along +Z of its node: 30 degrees to the left of the viewer, as its carcase looks.
        var drawer = file.Node("two_drawer-1").World;
        var (scale, way) = (drawer.Z.Length, drawer.Z);
        Assert.Equal(-Math.Sin(Math.PI / 6), way.X / scale, 1e-6);
        Assert.Equal(0, way.Y / scale, 1e-9);
        Assert.Equal(Math.Cos(Math.PI / 6), way.Z / scale, 1e-6);
        // A door turns about +Y of its node, at its hinge edge: the corner of the opening beside the left stile.
        var (plain, door) = (file.Node("one_door").World, file.Node("two_door").World);
        Assert.Equal(1, door.Y.Y / door.Y.Length, 1e-9);
        Assert.Equal(way.X, door.Z.X, 1e-9);
        // Both carcases have the same stiles, 40 wide, and gaps of 2 mm: the one door's edge stands that far right of
        // the left end of the first, the other's that far along the turned front from where the two carcases meet.
        const double Along = 40 + 2;
        var meet = plain.Origin.X + (600 - Along) / 1000;
        Assert.Equal(meet + (Along * Math.Cos(Math.PI / 6) / 1000), door.Origin.X, 1e-5);
        Assert.Equal(plain.Origin.Z + (Along * Math.Sin(Math.PI / 6) / 1000), door.Origin.Z, 1e-5);
    }
}
