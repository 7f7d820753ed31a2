using System.Globalization;
using RangeMap.Grids;

namespace RangeMap.Records;

/// <summary>Which other place of the day is far.</summary>
internal sealed class FarPlaceWords(CheckContext context) : IDoubtParticulars
{
    public Doubts Doubt => Doubts.TwoFarPlaces;

    public string? Explain(Record record)
    {
        var far = (context.OthersOfDay?.Invoke(record) ?? []).Where(other => other.Key != record.Key)
            .Select(other => (other.Square, Km: SquareDistance.Km(record.Square, other.Square)))
            .Where(other => other.Km > context.Limits.FarPlacesKm)
            .OrderByDescending(other => other.Km).FirstOrDefault();
        return far.Km > 0
            ? string.Create(CultureInfo.InvariantCulture, $"On {DayWords.Of(record.Dates)} {record.Recorder} is also recorded in {far.Square}, {far.Km:0} km from {record.Square}.")
            : null;
    }
}

/// <summary>Which other record of the day is the same.</summary>
internal sealed class DuplicateWords(CheckContext context) : IDoubtParticulars
{
    public Doubts Doubt => Doubts.DuplicateRecord;

    public string? Explain(Record record)
    {
        var same = (context.OthersOfDay?.Invoke(record) ?? []).FirstOrDefault(other =>
            other.Key != record.Key && other.Taxon.Id == record.Taxon.Id && other.Square == record.Square
            && other.Dates == record.Dates && other.Stage == record.Stage && other.Sex == record.Sex && other.Present == record.Present);
        return same is null
            ? null
            : $"{record.Recorder} has another record of {record.Taxon.ScientificName} in {record.Square} on {DayWords.Of(record.Dates)}" + (same.Site is { } site ? $" (site: {site})." : ".");
    }
}

/// <summary>Which town's centre the point is.</summary>
internal sealed class TownCentreWords(CheckContext context) : IDoubtParticulars
{
    public Doubts Doubt => Doubts.PlaceDefault;

    public string? Explain(Record record) => record.Point is { } point && context.Town?.Invoke(point) is { } town
        ? $"The point is exactly the centre that gazetteers give for {town}, and several records of the file stand there."
        : null;
}
