namespace RangeMap.Change;

/// <summary>Change between the first and the last period of a survey by five measures that allow for effort, each in its own way.</summary>
public static class EffortCorrectedChange
{
    /// <summary>All measures of all taxa, by taxon and then in the order of <see cref="PreparedChange.Of"/>.</summary>
    /// <param name="survey">A whole taxonomic group: the measures lean on the other taxa.</param>
    /// <param name="options">Conditions and constants.</param>
    /// <exception cref="ArgumentOutOfRangeException">An option lies outside its range.</exception>
    public static IReadOnlyList<ChangeEstimate> Measure(GroupSurvey survey, ChangeOptions options)
    {
        var prepared = Prepare(survey, options);
        var ofTaxon = new IReadOnlyList<ChangeEstimate>[survey.Taxa];
        Parallel.For(0, ofTaxon.Length, taxon => ofTaxon[taxon] = prepared.Of(taxon));
        return [.. ofTaxon.SelectMany(estimates => estimates)];
    }

    /// <summary>Computes what all taxa share, so that each one asked for afterwards is cheap.</summary>
    /// <param name="survey">A whole taxonomic group.</param>
    /// <param name="options">Conditions and constants.</param>
    /// <exception cref="ArgumentOutOfRangeException">An option lies outside its range.</exception>
    public static PreparedChange Prepare(GroupSurvey survey, ChangeOptions options) => new(survey, options);
}
