using System.Globalization;
using RangeMap.Records;
using RangeMap.Store;

namespace RangeMap.Server;

/// <summary>Reads what a question about records names.</summary>
internal static class RecordAsk
{
    /// <summary>A record.</summary>
    /// <exception cref="UserException">The text names none.</exception>
    public static RecordId Id(string text) => RecordId.TryParse(text, out var id) ? id : throw Unknown(text);

    /// <summary>A status; null where none is named.</summary>
    /// <exception cref="UserException">The word is not known.</exception>
    public static ReviewStatus? Status(string? word, string where)
    {
        if (string.IsNullOrEmpty(word))
            return null;
        foreach (var status in Enum.GetValues<ReviewStatus>())
        {
            if (RecordJson.Word(status).Equals(word, StringComparison.OrdinalIgnoreCase))
                return status;
        }

        throw new UserException($"'{word}' is no status of a review.", where, $"Use one of {string.Join(", ", Enum.GetValues<ReviewStatus>().Select(RecordJson.Word))}.");
    }

    /// <summary>Doubts by code with commas between; null where none is named.</summary>
    /// <exception cref="UserException">A code is not known.</exception>
    public static Doubts? Doubts(string? codes)
    {
        if (string.IsNullOrEmpty(codes))
            return null;
        var doubts = Records.Doubts.None;
        foreach (var code in codes.Split(',', StringSplitOptions.TrimEntries))
            doubts |= DoubtCatalogue.Find(code) ?? throw new UserException($"'{code}' is no doubt.", "doubt", $"Use one of {string.Join(", ", DoubtCatalogue.All.Select(entry => entry.Code))}.");
        return doubts;
    }

    /// <summary>A day; null where none is named.</summary>
    /// <exception cref="UserException">The text is no day.</exception>
    public static DateOnly? Day(string? text, string where)
    {
        if (string.IsNullOrEmpty(text))
            return null;
        return DateOnly.TryParseExact(text, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out var day)
            ? day
            : throw new UserException($"'{text}' is no day.", where, "Write it as 2026-06-07.") { IsArgument = true };
    }

    /// <summary>A version of a record as it was told; null where none is named.</summary>
    /// <exception cref="UserException">The text is no version.</exception>
    public static long? Version(string? text)
    {
        if (string.IsNullOrEmpty(text))
            return null;
        return ulong.TryParse(text, NumberStyles.AllowHexSpecifier, CultureInfo.InvariantCulture, out var version)
            ? (long)version
            : throw new UserException($"'{text}' is no version of a record.", "version", "Use the version that the record was told with.");
    }

    /// <summary>A page of records.</summary>
    /// <exception cref="UserException">It goes on after something that ended no page.</exception>
    public static RecordPage Page(Func<RecordPage> read)
    {
        try
        {
            return read();
        }
        catch (StoreException problem) when (problem.IsOfRequest)
        {
            throw new UserException(problem.Message, "after", problem.Mend);
        }
    }

    /// <summary>A record that is not there, or not for the one who asks.</summary>
    public static UserException Unknown(string id) =>
        new($"There is no record '{id}'.", "id", "GET /api/v1/records lists records with their names.", StatusCodes.Status404NotFound);
}
