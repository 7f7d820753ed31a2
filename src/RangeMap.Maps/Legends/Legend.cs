using System.Globalization;
using RangeMap.Presence;

namespace RangeMap.Maps;

/// <summary>The classes that a map is coloured by.</summary>
/// <param name="Property">The property of a square that decides its class: period, latest, first or year.</param>
/// <param name="Classes">The classes, first to last; they do not overlap.</param>
public sealed record Legend(string Property, IReadOnlyList<LegendClass> Classes)
{
    /// <summary>Classes of years at most; more cannot be told apart.</summary>
    public const int MostYearClasses = 8;

    private static readonly int[] YearSteps = [1, 2, 5, 10, 20, 25, 50, 100, 200, 500, 1000, 2000, 5000, 10000];

    /// <summary>A class a period.</summary>
    /// <param name="property"><see cref="PropertyNames.Period"/> to show when a square was first found, <see cref="PropertyNames.Latest"/> when last.</param>
    /// <param name="periods">The periods of the map.</param>
    public static Legend OfPeriods(string property, IReadOnlyList<Period> periods) =>
        new(property, Coloured([.. periods.Select((period, i) => (i, i + 1, period.Text))]));

    /// <summary>Equal classes of 1, 2, 5, 10, 20 ... years that start at multiples of that number and cover a span.</summary>
    /// <param name="property"><see cref="PropertyNames.First"/>, <see cref="PropertyNames.Last"/> or <see cref="PropertyNames.Year"/>.</param>
    /// <param name="firstYear">The first year to cover, 1 to 9999.</param>
    /// <param name="lastYear">The last year to cover, not before the first.</param>
    /// <param name="most">Classes at most, from 1 to <see cref="MostYearClasses"/>.</param>
    public static Legend OfYears(string property, int firstYear, int lastYear, int most = MostYearClasses)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(most, 1);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(most, MostYearClasses);
        ArgumentOutOfRangeException.ThrowIfLessThan(firstYear, 1);
        ArgumentOutOfRangeException.ThrowIfLessThan(lastYear, firstYear);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(lastYear, 9999);
        var step = YearSteps.First(years => lastYear / years - firstYear / years < most);
        var classes = new List<(int From, int To, string Label)>();
        for (var from = firstYear / step * step; from <= lastYear; from += step)
            classes.Add((from, from + step, YearLabel(Math.Max(from, firstYear), Math.Min(from + step - 1, lastYear))));
        return new(property, Coloured(classes));
    }

    private static string YearLabel(int first, int last) =>
        first == last ? first.ToString(CultureInfo.InvariantCulture) : string.Create(CultureInfo.InvariantCulture, $"{first}\u2013{last}");

    private static LegendClass[] Coloured(List<(int From, int To, string Label)> classes)
    {
        var colours = classes.Count == 0 ? [] : Palette.Of(classes.Count);
        return [.. classes.Select((part, i) => new LegendClass(part.From, part.To, part.Label, colours[i]))];
    }
}

/// <summary>One class of a legend: the values [From, To) of the legend's property.</summary>
/// <param name="From">The least value, inside.</param>
/// <param name="To">The value where the next class starts, outside.</param>
/// <param name="Label">The words beside the colour: a period as asked, or the years covered.</param>
/// <param name="Colour">The colour.</param>
public sealed record LegendClass(int From, int To, string Label, ClassColour Colour);
