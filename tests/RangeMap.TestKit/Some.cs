using RangeMap.Grids;
using RangeMap.Records;

namespace RangeMap.TestKit;

/// <summary>Small makers of valid values, so that a test states only what it is about. All names are invented.</summary>
public static class Some
{
    /// <summary>A taxon with a number.</summary>
    public static Taxon Taxon(int number = 1, string? group = "emberwings") =>
        new($"t{number}", $"Inventa exempla{number}") { Number = number, Group = group };

    /// <summary>A record of a taxon in a square on a day, whose identity follows from its row.</summary>
    public static Record Record(string square, string day, Taxon? taxon = null, long row = 1) =>
        Record(GridReference.Parse(square), Days(day), taxon, row);

    /// <summary>A record of a taxon in a square on some day of a range.</summary>
    public static Record Record(Square square, DayRange days, Taxon? taxon = null, long row = 1) => new()
    {
        Row = row,
        Key = (UInt128)row * 0x9E3779B97F4A7C15UL,
        Content = (UInt128)HashCode.Combine(square.Code, days),
        Taxon = taxon ?? Taxon(),
        Square = square,
        Dates = days,
        Recorder = "A. Invented",
    };

    /// <summary>A day, or two with a slash between.</summary>
    public static DayRange Days(string text)
    {
        var parts = text.Split('/');
        return new(Day(parts[0]), Day(parts[^1]));
    }

    private static DateOnly Day(string text) => DateOnly.ParseExact(text, "yyyy-MM-dd", System.Globalization.CultureInfo.InvariantCulture);
}
