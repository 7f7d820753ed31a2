namespace RangeMap.Records;

/// <summary>A row that could not become a record.</summary>
public sealed record Refusal(long Row, long Line, string Field, string Value, string Reason, string RawText);
