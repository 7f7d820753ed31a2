namespace RangeMap.Change.Tests.Trends;

/// <summary>The share of visits as if every visit were independent: a foil, to show what the design effect is for. No part of the product.</summary>
internal static class IndependentVisits
{
    internal const string Method = "reporting-rate, visits independent";

    internal static IEnumerable<ChangeEstimate> Measure(GroupSurvey survey)
    {
        var visits = SharedVisits.Of(survey);
        for (var taxon = 0; taxon < survey.Taxa; taxon++)
        {
            int[] found = [0, 0], all = [0, 0];
            foreach (var visit in visits.All)
                all[visit.Season]++;
            foreach (var visit in visits.With(taxon))
                found[visits.All[visit].Season]++;
            if (found[0] + found[1] < 10)
                continue;
            double before = (double)found[0] / all[0], after = (double)found[1] / all[1];
            var interval = SharesOfVisits.OfDifference(before, SharesOfVisits.Wilson(before, all[0]), after, SharesOfVisits.Wilson(after, all[1]), 0);
            yield return ChangeEstimate.Of(taxon, Method, "percentage points", visits.Squares, 100 * (after - before), new(100 * interval.Low, 100 * interval.High));
        }
    }
}
