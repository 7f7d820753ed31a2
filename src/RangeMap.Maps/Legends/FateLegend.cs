namespace RangeMap.Maps;

/// <summary>One class of a legend whose property is a word.</summary>
/// <param name="Value">The word.</param>
/// <param name="Label">What it means, for people.</param>
/// <param name="Colour">The colour.</param>
public sealed record WordClass(string Value, string Label, ClassColour Colour);

/// <summary>
/// The classes of what became of a square between two periods (<see cref="SquareChange"/>). What is new is darkest, what is gone stands apart by
/// its hue, what was kept is quiet; squares that were not surveyed twice are grey, for nothing is known of them.
/// </summary>
public static class FateLegend
{
    /// <summary>The classes, in the order in which legends show them.</summary>
    public static IReadOnlyList<WordClass> Classes { get; } =
    [
        new("gained", "Gained: looked for before in vain", Colour(new(0.30, 0.13, -80), new(0.93, 0.12, 95))),
        new("lost", "Lost: looked for later in vain", Colour(new(0.58, 0.17, 45), new(0.66, 0.17, 30))),
        new("kept", "Stayed: found both times", Colour(new(0.66, 0.09, 235), new(0.60, 0.10, 250))),
        new("not-surveyed-before", "Found later, not visited before", Colour(new(0.50, 0, 0), new(0.72, 0, 0))),
        new("not-surveyed-after", "Found before, not visited again", Colour(new(0.50, 0, 0), new(0.72, 0, 0))),
    ];

    /// <summary>The place of a word in <see cref="Classes"/>.</summary>
    /// <exception cref="ArgumentException">There is no such class.</exception>
    public static int IndexOf(string value)
    {
        for (var i = 0; i < Classes.Count; i++)
        {
            if (Classes[i].Value == value)
                return i;
        }

        throw new ArgumentException($"'{value}' is nothing that becomes of a square.", nameof(value));
    }

    private static ClassColour Colour(OklchColour light, OklchColour dark) => new(light.ToHex(), dark.ToHex());
}
