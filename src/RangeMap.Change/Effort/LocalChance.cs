namespace RangeMap.Change;

/// <summary>
/// The chance that a species lives unrecorded in a square, from the squares round it and the visits that missed it (docs/methods/expected-species.md,
/// eq. 1 to 4). A simple rule of our own: it knows nothing of habitat, and takes visits for alike.
/// </summary>
/// <param name="With">k: searched neighbours in which the species was found.</param>
/// <param name="VisitsWithout">Visits to each searched neighbour in which it was not found; 0 where the group is known there from records without a day.</param>
/// <param name="SquaresWithVisits">j: those of the former where a visit noted it, at most <paramref name="With"/>.</param>
/// <param name="Visits">V: visits to those j squares.</param>
/// <param name="Noted">M: visits of these that noted the species, at least <paramref name="SquaresWithVisits"/>.</param>
/// <param name="VisitsHere">v: visits to the square itself, all of which missed it.</param>
public sealed record LocalChance(int With, IReadOnlyList<int> VisitsWithout, int SquaresWithVisits, int Visits, int Noted, int VisitsHere)
{
    /// <summary>n: neighbours in which the group was recorded.</summary>
    public int Searched => With + VisitsWithout.Count;

    /// <summary>
    /// Eq. 1: the chance that a visit notes the species where it lives. A square would not count without one visit that noted it, so that one is left out
    /// of both numbers; half a find on two visits more stands for what is known without any.
    /// </summary>
    public double Detection => (Noted - SquaresWithVisits + 0.5) / (Visits - SquaresWithVisits + 2);

    /// <summary>Eq. 2 and 3: the chance before the square's own visits are looked at. A neighbour without a find counts by how surely its visits would have made one.</summary>
    public double Before => (With + 1) / (With + VisitsWithout.Sum(visits => 1 - Missed(visits)) + 2);

    /// <summary>Eq. 4: the chance given that all visits missed it, 0 to 1.</summary>
    public double Probability
    {
        get
        {
            var there = Before * Missed(VisitsHere);
            return there / (there + 1 - Before);
        }
    }

    private double Missed(int visits) => Math.Pow(1 - Detection, visits);
}
