namespace RangeMap.Change;

/// <summary>
/// The rival of the arrival model: a species that was there before the first visits in every square that suits it, and never in the others. Chance of detection and share of unsuited
/// squares by the EM algorithm (docs/methods/arrival-surface.md, eq. 15).
/// </summary>
internal static class ResidentModel
{
    private const int Rounds = 30;
    private const double Settled = 0.01;

    /// <summary>Logarithm of the likelihood of all visits, at its greatest.</summary>
    /// <param name="sites">Visited squares.</param>
    /// <param name="strayRate">Chance that a visit to an unsuited square finds the species all the same.</param>
    /// <param name="detection">Where the search for the chance of detection begins.</param>
    /// <param name="unsuited">Where that for the share begins.</param>
    public static double LogLikelihood(IReadOnlyList<ArrivalSite> sites, double strayRate, DetectionCurve detection, double unsuited)
    {
        var tallies = sites.Select(site => Tally.Of(site, strayRate)).ToArray();
        var never = new double[sites.Count];
        var best = double.NegativeInfinity;
        for (var round = 0; round < Rounds; round++)
        {
            var log = 0.0;
            var classes = new SortedDictionary<int, (double Found, double Missed)>();
            for (var i = 0; i < tallies.Length; i++)
            {
                var (present, absent) = (Math.Log(1 - unsuited) + tallies[i].LogPresent(detection), Math.Log(unsuited) + tallies[i].LogAbsent);
                var most = Math.Max(present, absent);
                var sum = Math.Exp(present - most) + Math.Exp(absent - most);
                log += most + Math.Log(sum);
                never[i] = Math.Exp(absent - most) / sum;
                tallies[i].AddTo(classes, 1 - never[i]);
            }

            if (log - best < Settled)
                return Math.Max(log, best);
            best = log;
            detection = detection.Improved([.. classes.Select(pair => (pair.Key, pair.Value.Found, pair.Value.Missed))]);
            unsuited = UnsuitedShare.Likeliest(never, unsuited);
        }

        return best;
    }

    /// <summary>Visits to a square by the length of their lists.</summary>
    private sealed record Tally((int ListLength, int Found, int Missed)[] Lists, double LogAbsent)
    {
        public static Tally Of(ArrivalSite site, double strayRate)
        {
            var lists = site.Visits.GroupBy(visit => visit.ListLength).Select(group => (group.Key, group.Count(visit => visit.Found), group.Count(visit => !visit.Found))).ToArray();
            return new(lists, site.Visits.Sum(visit => Math.Log(visit.Found ? strayRate : 1 - strayRate)));
        }

        public double LogPresent(DetectionCurve detection) => Lists.Sum(list =>
        {
            var chance = detection.Chance(list.ListLength);
            return list.Found * Math.Log(chance) + list.Missed * Math.Log(1 - chance);
        });

        public void AddTo(SortedDictionary<int, (double Found, double Missed)> classes, double share)
        {
            foreach (var (length, found, missed) in Lists)
            {
                var sum = classes.GetValueOrDefault(length);
                classes[length] = (sum.Found + share * found, sum.Missed + share * missed);
            }
        }
    }
}
