namespace RangeMap.Server;

/// <summary>An import was committed while a question to the edition before it was being answered; the answer would be half of each.</summary>
public sealed class EditionPassedException() : Exception("The data changed while the question was being answered. Ask again.");
