namespace RangeMap.Records;

/// <summary>One row that could not become a record.</summary>
/// <param name="Row">The row, counted from 1 for the first after the header.</param>
/// <param name="Line">The physical line on which the row begins, counted from 1; line ends inside quotes count.</param>
/// <param name="Field">The column at fault by its header, or several joined by " + ", or "" when the row as a whole is at fault.</param>
/// <param name="Value">What stands there.</param>
/// <param name="Reason">What is wrong with it and how to mend it.</param>
/// <param name="RawText">The row as it stands in the file; cut if it is longer than a row may be.</param>
public sealed record Refusal(long Row, long Line, string Field, string Value, string Reason, string RawText);

/// <summary>What is wrong with a row before its row number and text are known.</summary>
/// <param name="Term">The term at fault; null for the row as a whole.</param>
/// <param name="Value">What stands there.</param>
/// <param name="Reason">What is wrong with it and how to mend it.</param>
internal sealed record RowFault(Term? Term, string Value, string Reason);
