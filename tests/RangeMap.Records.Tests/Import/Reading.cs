using System.Text;

namespace RangeMap.Records.Tests;

/// <summary>What came of reading a whole file.</summary>
internal sealed record Reading(RecordReader Reader, IReadOnlyList<Record> Records, IReadOnlyList<Refusal> Refusals)
{
    /// <summary>An invented list: names of no living thing.</summary>
    public static TaxonList Taxa { get; } = new(
        [
            new("1", "Fictus ruber") { Authorship = "Nemo, 1801", VernacularName = "Red Fictus", AggregateId = "9", FirstYear = 1900 },
            new("2", "Fictus albus") { Authorship = "(Nemo, 1799)", VernacularName = "White Fictus", AggregateId = "9" },
            new("9", "Fictus ruber agg.") { Rank = "aggregate" },
        ],
        [new("3", "Fictus sanguineus", "1")]);

    public static ImportOptions Options { get; } = new() { Today = new DateOnly(2026, 6, 7) };

    public static Reading Of(string text, ImportOptions? options = null, TaxonList? taxa = null) =>
        Of(new MemoryStream(Encoding.UTF8.GetBytes(text)), options, taxa);

    public static Reading Of(Stream stream, ImportOptions? options = null, TaxonList? taxa = null)
    {
        var reader = RecordReader.Open(stream, taxa ?? Taxa, options ?? Options);
        var records = new List<Record>();
        var refusals = new List<Refusal>();
        while (reader.Read())
        {
            Assert.True(reader.Record is null != reader.Refusal is null, "A row is either a record or a refusal.");
            if (reader.Record is { } record)
                records.Add(record);
            else
                refusals.Add(reader.Refusal!);
        }

        Assert.Equal(reader.Counts.Read, records.Count + refusals.Count);
        Assert.Equal(reader.Row, reader.Counts.Read);
        return new(reader, records, refusals);
    }

    /// <summary>Reads one row under the given header.</summary>
    public static Reading OfRow(string header, string row, ImportOptions? options = null) => Of($"{header}\n{row}\n", options);

    /// <summary>The problem that stops a file.</summary>
    public static ImportProblem ProblemOf(string text, ImportOptions? options = null) => ProblemOf(new MemoryStream(Encoding.UTF8.GetBytes(text)), options);

    /// <inheritdoc cref="ProblemOf(string, ImportOptions?)"/>
    public static ImportProblem ProblemOf(Stream stream, ImportOptions? options = null) => Assert.Throws<ImportProblemException>(() => Of(stream, options)).Problem;
}
