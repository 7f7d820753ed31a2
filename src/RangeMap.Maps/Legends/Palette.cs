namespace RangeMap.Maps;

/// <summary>
/// The colours of ordered classes, made by formula for any number of them. The last class stands out most: darkest on
/// light paper, brightest on a dark screen. Lightness changes evenly, so that the order can be read in grey
/// and with any colour vision; hue runs from ochre by red and purple to blue, and back for dark screens.
/// </summary>
/// <remarks>Every colour has a contrast of at least 3:1 with its paper, as graphics should (WCAG 2.1, 1.4.11); tests measure this.</remarks>
public static class Palette
{
    /// <summary>The paper that <see cref="ClassColour.Light"/> is made for.</summary>
    public const string LightPaper = "#ffffff";

    /// <summary>The paper that <see cref="ClassColour.Dark"/> is made for.</summary>
    public const string DarkPaper = "#14181c";

    private static readonly OklchColour LightFirst = new(0.67, 0.14, 65);
    private static readonly OklchColour LightLast = new(0.28, 0.14, -75);
    private static readonly OklchColour DarkFirst = new(0.53, 0.15, -80);
    private static readonly OklchColour DarkLast = new(0.93, 0.12, 95);

    /// <summary>Colours for a number of classes, first to last; a single class gets the last colour.</summary>
    /// <exception cref="ArgumentOutOfRangeException">There is no class.</exception>
    public static IReadOnlyList<ClassColour> Of(int classes)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(classes, 1);
        return [.. Enumerable.Range(0, classes).Select(i =>
        {
            var share = classes == 1 ? 1 : (double)i / (classes - 1);
            return new ClassColour(LightFirst.Towards(LightLast, share).ToHex(), DarkFirst.Towards(DarkLast, share).ToHex());
        })];
    }
}

/// <summary>The colour of one class, as #rrggbb.</summary>
/// <param name="Light">On light paper.</param>
/// <param name="Dark">On a dark screen.</param>
public readonly record struct ClassColour(string Light, string Dark);
