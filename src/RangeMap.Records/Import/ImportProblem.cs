namespace RangeMap.Records;

/// <summary>Why a whole file cannot be imported.</summary>
/// <param name="What">What is wrong, in a sentence.</param>
/// <param name="Where">Where: a line, a column, a setting.</param>
/// <param name="Mend">What to do about it.</param>
public sealed record ImportProblem(string What, string Where, string Mend);

/// <summary>Stops an import before anything is kept. The only exception that reading a file's content gives rise to.</summary>
public sealed class ImportProblemException(ImportProblem problem) : Exception($"{problem.What} ({problem.Where}) {problem.Mend}")
{
    /// <inheritdoc cref="ImportProblem"/>
    public ImportProblem Problem { get; } = problem;
}
