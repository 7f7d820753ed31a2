using System.Globalization;
using RangeMap.Maps;

namespace RangeMap.Server;

/// <summary>What is asked of the items of a collection.</summary>
/// <param name="Limit">Most features in one answer.</param>
/// <param name="Offset">Features passed over.</param>
/// <param name="Box">Box that features touch.</param>
/// <param name="Days">First and last day that features' times meet.</param>
/// <param name="Filters">Properties by name, each with the value that it must have.</param>
internal sealed record OgcQuery(int Limit, long Offset, DegreeBox? Box, (DateOnly First, DateOnly Last)? Days, IReadOnlyDictionary<string, string> Filters)
{
    public const int DefaultLimit = 100, MostLimit = 10_000;

    private static readonly string[] Standard = ["limit", "offset", "bbox", "datetime", "f"];

    /// <summary>Reads a question; a parameter that the interface does not describe is an error, as the standard asks.</summary>
    /// <exception cref="UserException">A parameter is not known, stands twice, or cannot be read.</exception>
    public static OgcQuery Of(OgcCollection collection, IQueryCollection asked)
    {
        Check(asked, [.. Standard, .. collection.Table.Columns.Select(column => column.Name)]);
        var filters = collection.Table.Columns.Where(column => asked.ContainsKey(column.Name)).ToDictionary(column => column.Name, column => asked[column.Name].ToString());
        return new(
            (int)Math.Min(MostLimit, Whole(asked, "limit", DefaultLimit, 1)), Whole(asked, "offset", 0, 0), asked.TryGetValue("bbox", out var box) ? ReadBox(box.ToString()) : null,
            asked.TryGetValue("datetime", out var time) ? ReadDays(time.ToString()) : null, filters);
    }

    /// <summary>Refuses parameters that are not named, or stand twice.</summary>
    /// <exception cref="UserException">There is one.</exception>
    public static void Check(IQueryCollection asked, IReadOnlyCollection<string> known)
    {
        foreach (var (name, values) in asked)
        {
            if (!known.Contains(name))
                throw new UserException($"There is no parameter '{name}' here.", name, known.Count == 0 ? "This address takes none." : $"Use some of {string.Join(", ", known)}.");
            if (values.Count > 1)
                throw new UserException($"The parameter '{name}' stands there {values.Count} times.", name, "Write it once.");
        }
    }

    private static DegreeBox? ReadBox(string text) =>
        ExportAsk.Box(text) ?? throw new UserException("The box is empty.", "bbox", "Write four numbers with commas between them, degrees: west,south,east,north.");

    private static long Whole(IQueryCollection asked, string name, long otherwise, long least)
    {
        if (!asked.TryGetValue(name, out var values))
            return otherwise;
        var text = values.ToString();
        // Figures without end are a number still, and above the most.
        var read = text.Length > 18 && text.All(char.IsAsciiDigit) ? int.MaxValue : long.TryParse(text, NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture, out var number) ? number : least - 1;
        return read >= least ? read : throw new UserException($"'{text}' cannot be a {name}.", name, FormattableString.Invariant($"Write a whole number from {least}."));
    }

    private static (DateOnly First, DateOnly Last) ReadDays(string text)
    {
        var parts = text.Split('/');
        DateOnly? first = null, last = null;
        var readable = parts.Length switch
        {
            1 => TryDay(parts[0], out first) && TryDay(parts[0], out last) && first is not null,
            2 => TryDay(parts[0], out first) && TryDay(parts[1], out last) && (first ?? last) is not null,
            _ => false,
        };
        return readable && !(first > last) ? (first ?? DateOnly.MinValue, last ?? DateOnly.MaxValue)
            : throw new UserException($"'{text}' is no time.", "datetime", "Write a day or time (RFC 3339), or two with a stroke between, of which one may be open: 2010-01-01/.. .");
    }

    private static bool TryDay(string text, out DateOnly? day)
    {
        day = null;
        if (text is "" or "..")
            return true;
        if (!DateTimeOffset.TryParse(text, CultureInfo.InvariantCulture, DateTimeStyles.AssumeUniversal | DateTimeStyles.AdjustToUniversal, out var time) || text.Length < 10 || !char.IsAsciiDigit(text[0]))
            return false;
        day = DateOnly.FromDateTime(time.UtcDateTime);
        return true;
    }
}
