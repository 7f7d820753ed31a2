namespace RangeMap.Records.Tests;

/// <summary>Writes archives for tests.</summary>
internal static class SomeArchive
{
    public const string Occurrence = "http://rs.tdwg.org/dwc/terms/Occurrence";
    public const string Event = "http://rs.tdwg.org/dwc/terms/Event";

    /// <summary>The core of most tests: id and occurrenceID in column 0, then name, date, place.</summary>
    public const string UsualFields = "<id index='0'/><field index='0' term='http://rs.tdwg.org/dwc/terms/occurrenceID'/><field index='1' term='http://rs.tdwg.org/dwc/terms/scientificName'/>"
        + "<field index='2' term='http://rs.tdwg.org/dwc/terms/eventDate'/><field index='3' term='http://example.org/terms/gridReference'/>";

    public static string Meta(params string[] tables) =>
        $"<archive xmlns='http://rs.tdwg.org/dwc/text/' metadata='eml.xml'>{string.Concat(tables)}</archive>";

    public static string Core(string attributes = "", string fields = UsualFields, string rowType = Occurrence, params string[] files) =>
        Table("core", attributes, fields, rowType, files.Length == 0 ? ["occurrence.txt"] : files);

    public static string Extension(string attributes, string fields, string rowType, string file) => Table("extension", attributes, fields, rowType, [file]);

    public static Reading Read(string meta, params (string Name, string Content)[] files) => Reading.Of(SomeZip.Of([("meta.xml", meta), .. files]));

    public static ImportProblem ProblemOf(string meta, params (string Name, string Content)[] files) => Reading.ProblemOf(SomeZip.Of([("meta.xml", meta), .. files]));

    private static string Table(string element, string attributes, string fields, string rowType, string[] files) =>
        $"<{element} rowType='{rowType}' {attributes}><files>{string.Concat(files.Select(f => $"<location>{f}</location>"))}</files>{fields}</{element}>";
}
