using System.Text.Json.Serialization;

namespace RangeMap.Server;

/// <summary>What is read of the description of an export (CSV on the Web): its columns, where its rows come from, and under which licences.</summary>
/// <param name="Title">Title of the table.</param>
/// <param name="Description">What a row is.</param>
/// <param name="Source">Title of the data.</param>
/// <param name="Citation">How to cite them.</param>
/// <param name="Rights">Licence of each data set, with its number of records.</param>
/// <param name="TableSchema">The columns.</param>
internal sealed record CsvwShape(
    [property: JsonPropertyName("dc:title")] string Title, [property: JsonPropertyName("dc:description")] string Description, [property: JsonPropertyName("dc:source")] string Source,
    [property: JsonPropertyName("dc:bibliographicCitation")] string Citation, [property: JsonPropertyName("dc:rights")] IReadOnlyList<string> Rights, CsvwSchemaShape TableSchema)
{
    /// <summary>All else that CSV on the Web has: context, dialect, notes and more.</summary>
    [JsonExtensionData]
    public IDictionary<string, object>? More { get; init; }
}

/// <summary>The columns of a table.</summary>
/// <param name="Columns">The columns, in order.</param>
/// <param name="PrimaryKey">Names of the columns that together tell a row from all others.</param>
internal sealed record CsvwSchemaShape(IReadOnlyList<CsvwColumnShape> Columns, IReadOnlyList<string> PrimaryKey);

/// <summary>A column.</summary>
/// <param name="Name">Its name.</param>
/// <param name="Titles">Its header.</param>
/// <param name="Datatype">Kind of its values.</param>
/// <param name="Required">False where cells may be empty.</param>
/// <param name="Description">What it means.</param>
internal sealed record CsvwColumnShape(string Name, string Titles, string Datatype, bool Required, [property: JsonPropertyName("dc:description")] string Description)
{
    /// <summary>The published term; absent where there is none.</summary>
    public string PropertyUrl { get; init; } = "";
}
