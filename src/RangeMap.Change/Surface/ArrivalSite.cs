namespace RangeMap.Change;

/// <summary>One visit to a square as the arrival model reads it.</summary>
/// <param name="Year">When, in years (or another unit of time).</param>
/// <param name="ListLength">Taxa of the group noted, the species itself among them; at least 1, as which a visit without any find counts.</param>
/// <param name="Found">True where the species was found.</param>
public readonly record struct ArrivalVisit(int Year, int ListLength, bool Found);

/// <summary>A square with everything that is known of it.</summary>
/// <param name="X">Kilometres east of its centre, all squares on one plane.</param>
/// <param name="Y">Kilometres north of its centre.</param>
/// <param name="Visits">Its visits in any order; none where nobody looked.</param>
public sealed record ArrivalSite(double X, double Y, IReadOnlyList<ArrivalVisit> Visits)
{
    /// <summary>The earliest year in which the species was found; null where it was not.</summary>
    public int? FirstFound
    {
        get
        {
            int? first = null;
            foreach (var visit in Visits)
            {
                if (visit.Found && !(visit.Year >= first))
                    first = visit.Year;
            }

            return first;
        }
    }

    /// <summary>The same square as it was known at the end of a year.</summary>
    public ArrivalSite Until(int year) => this with { Visits = [.. Visits.Where(visit => visit.Year <= year)] };
}
