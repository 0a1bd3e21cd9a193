using Dryfit.Measure;

namespace Dryfit.Inspection;

/// <summary>How far off a measured value may be before a check speaks, and why that much.</summary>
internal static class Tolerance
{
    /// <summary>
    /// 1/128 in (0.2 mm), for what is fitted: gaps, overlays, shoulders, play, and what stands in another's place by no more
    /// than a shaving. It is half of the finest division of a
    /// maker's rule (1/64 in), so a part cut to any mark of the rule is judged by that mark; and it is what a plane
    /// shaving or two takes off. Common practice.
    /// </summary>
    public static Length Fitting { get; } = Length.FromInches(0, 1, 128);

    /// <summary>
    /// 1 mm, the line between a gap that one sees and planes, and a wrong number: no shop cuts so badly, and a gap as wide
    /// as common practice makes it (1.6 to 3.2 mm) has then lost or gained a third at least. Common practice.
    /// </summary>
    public static Length WrongNumber { get; } = Length.FromMillimetres(1);

    /// <summary>
    /// 0.01 mm, for what is either so or not so: a slide's own window, parts where a wall stands. It only covers what the
    /// grid rounds where thirds and slanted cuts do not come out whole.
    /// </summary>
    public static Length Rounding { get; } = Length.FromMillimetres(new Rational(1, 100));

    /// <summary>
    /// 2 mm, what one setting of the fence covers: parts that differ by less are sawn as one batch, and the odd number among
    /// them is a slip of the pen (590 and 591; a sixteenth). Common practice.
    /// </summary>
    public static Length SawSetting { get; } = Length.FromMillimetres(2);

    /// <summary>
    /// 5 mm, under which a step in a line reads as a mistake: steps that are meant, set-backs and reveals, are made 1/4 in (6 mm)
    /// and more, so that they throw a shadow of their own. Common practice.
    /// </summary>
    public static Length ReadsAsMeant { get; } = Length.FromMillimetres(5);

    /// <summary>
    /// 1/32 in (0.8 mm), from which a lap is seen to run out along its edge: nothing lies beside it to measure it by, as the other
    /// side of a gap does. Premium casework is held to as much: architectural woodwork standards, from memory.
    /// </summary>
    public static Length SeenLap { get; } = Length.FromInches(0, 1, 32);

    /// <summary>1/16 in (1.6 mm), from which a corner that stands off catches light and fingers. Common practice.</summary>
    public static Length SeenWarp { get; } = Length.FromInches(0, 1, 16);
}
