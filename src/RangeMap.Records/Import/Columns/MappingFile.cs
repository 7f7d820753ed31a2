using System.Text.Json;

namespace RangeMap.Records;

/// <summary>
/// What a person stated about the columns of a kind of file. As JSON:
/// <c>{"columns":{"My date":"eventDate","Ref":null},"defaults":{"recordedBy":"A. Recorder"},"dateOrder":"dmy"}</c>.
/// </summary>
public sealed record MappingFile
{
    private static readonly JsonDocumentOptions Lenient = new() { CommentHandling = JsonCommentHandling.Skip, AllowTrailingCommas = true };

    /// <summary>Column header to term; null for a column that is kept and not used.</summary>
    public IReadOnlyDictionary<string, Term?> Columns { get; init; } = new Dictionary<string, Term?>();

    /// <summary>What a term says where its column is missing or its cell is empty.</summary>
    public IReadOnlyDictionary<Term, string> Defaults { get; init; } = new Dictionary<Term, string>();

    /// <summary>The order of dates such as 3/6/1998.</summary>
    public DateOrder DateOrder { get; init; }

    /// <summary>Reads the JSON form.</summary>
    /// <exception cref="ImportProblemException">It is not JSON, or holds a member, term or date order that is not known.</exception>
    public static MappingFile Read(Stream stream)
    {
        try
        {
            using var document = JsonDocument.Parse(stream, Lenient);
            return Understand(document.RootElement);
        }
        catch (Exception e) when (e is JsonException or InvalidOperationException)
        {
            throw Problem($"The mapping file cannot be understood: {e.Message}", "mapping file");
        }
    }

    /// <summary>The mapping of an import that was made, complete, so that the next file of the kind is read the same way.</summary>
    /// <param name="report">What each column was read as; see <see cref="ColumnMapping.Report"/>.</param>
    /// <param name="stated">What was stated for that import; null for nothing.</param>
    public static MappingFile OfReport(IReadOnlyDictionary<string, string> report, MappingFile? stated) => new()
    {
        Columns = report.Where(pair => !RefusalColumns.Contains(pair.Key)).ToDictionary(pair => pair.Key, pair => TermNames.FindOfficial(pair.Value)),
        Defaults = stated?.Defaults ?? new Dictionary<Term, string>(),
        DateOrder = stated?.DateOrder ?? DateOrder.NotStated,
    };

    /// <summary>Writes the JSON form.</summary>
    public void Write(Stream stream)
    {
        using var json = new Utf8JsonWriter(stream, new JsonWriterOptions { Indented = true });
        json.WriteStartObject();
        json.WriteStartObject("columns");
        foreach (var (column, term) in Columns)
            json.WriteString(column, term is { } known ? TermNames.Name(known) : null);
        json.WriteEndObject();
        json.WriteStartObject("defaults");
        foreach (var (term, value) in Defaults)
            json.WriteString(TermNames.Name(term), value);
        json.WriteEndObject();
        if (DateOrder != DateOrder.NotStated)
            json.WriteString("dateOrder", DateOrder == DateOrder.DayFirst ? "dmy" : "mdy");
        json.WriteEndObject();
    }

    private static MappingFile Understand(JsonElement root)
    {
        var mapping = new MappingFile();
        foreach (var member in root.EnumerateObject())
        {
            mapping = member.Name switch
            {
                "columns" => mapping with { Columns = Distinct(member.Value.EnumerateObject().Select(p => (p.Name, TermOrNull(p)))) },
                "defaults" => mapping with { Defaults = Distinct(member.Value.EnumerateObject().Select(p => (TermOf(p.Name), p.Value.GetString() ?? ""))) },
                "dateOrder" => mapping with { DateOrder = OrderOf(member.Value.GetString()) },
                _ => throw Problem($"The mapping file has a member \"{member.Name}\".", "mapping file"),
            };
        }

        return mapping;
    }

    private static Dictionary<TKey, TValue> Distinct<TKey, TValue>(IEnumerable<(TKey Key, TValue Value)> pairs)
        where TKey : notnull
    {
        var result = new Dictionary<TKey, TValue>();
        foreach (var (key, value) in pairs)
        {
            if (!result.TryAdd(key, value))
                throw Problem($"The mapping file names \"{key}\" twice.", "mapping file");
        }

        return result;
    }

    private static Term? TermOrNull(JsonProperty column) =>
        column.Value.ValueKind == JsonValueKind.Null || string.IsNullOrWhiteSpace(column.Value.GetString()) ? null : TermOf(column.Value.GetString()!);

    private static Term TermOf(string name) =>
        TermNames.FindOfficial(name) ?? throw Problem($"The mapping file uses a term \"{name}\" that is not known.", $"known: {string.Join(", ", Enum.GetValues<Term>().Select(TermNames.Name))}");

    private static DateOrder OrderOf(string? text) => text switch
    {
        "dmy" => DateOrder.DayFirst,
        "mdy" => DateOrder.MonthFirst,
        null or "" => DateOrder.NotStated,
        _ => throw Problem($"The date order \"{text}\" is not known.", "mapping file, dateOrder"),
    };

    private static ImportProblemException Problem(string what, string where) =>
        new(new(what, where, "Write {\"columns\":{\"header\":\"term\"},\"defaults\":{\"term\":\"value\"},\"dateOrder\":\"dmy\" or \"mdy\"}."));
}
