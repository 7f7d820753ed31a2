using System.Globalization;
using RangeMap.Grids;

namespace RangeMap.Records;

/// <summary>The cells of a row that say where.</summary>
internal readonly ref struct PlaceText
{
    public required ReadOnlySpan<char> GridReference { get; init; }

    public required ReadOnlySpan<char> Latitude { get; init; }

    public required ReadOnlySpan<char> Longitude { get; init; }

    public required ReadOnlySpan<char> Uncertainty { get; init; }

    public required ReadOnlySpan<char> Datum { get; init; }

    /// <summary>The country, which tells the grid of eastings and northings; empty where the row does not say.</summary>
    public ReadOnlySpan<char> Country { get; init; }

    /// <summary>The grid of the reference; empty where the row does not say.</summary>
    public ReadOnlySpan<char> System { get; init; }

    /// <summary>
    /// The place: the grid reference's square where there is one, else the smallest square that holds the whole circle
    /// round the point. Where both are given and disagree, the square stays and the record is in doubt.
    /// </summary>
    public bool TryRead(GridReferenceOptions options, out Place place, out RowFault? fault)
    {
        place = default;
        if (Latitude.IsEmpty != Longitude.IsEmpty)
        {
            fault = Latitude.IsEmpty
                ? new(Term.DecimalLatitude, "", "The longitude is given without the latitude.")
                : new(Term.DecimalLongitude, "", "The latitude is given without the longitude.");
            return false;
        }

        if (GridReference.IsEmpty)
            return TryReadPoint(out place, out fault);
        if (!TryState(ref options, out fault))
            return false;
        if (!Grids.GridReference.TryParse(GridReference, options, out var square, out var why))
        {
            fault = new(Term.GridReference, GridReference.ToString(), why!);
            return false;
        }

        return TryAddPoint(square, out place, out fault);
    }

    /// <summary>Adds what the row says of its grid to what the data set says.</summary>
    private bool TryState(ref GridReferenceOptions options, out RowFault? fault)
    {
        fault = null;
        if (!Country.IsEmpty)
            options = options with { Country = CountryName.Read(Country) };
        if (System.IsEmpty)
            return true;
        if (GridSystemName.Read(System) is not { } stated)
        {
            fault = new(Term.GridSystem, System.ToString(), GridSystemName.WhyUnknown);
            return false;
        }

        options = options with { System = stated };
        return true;
    }

    private bool TryReadPoint(out Place place, out RowFault? fault)
    {
        place = default;
        if (Latitude.IsEmpty)
        {
            fault = new(Term.GridReference, "", "There is no place: give a grid reference, or latitude and longitude.");
            return false;
        }

        if (!CoordinatePlace.TryRead(Latitude, Longitude, Uncertainty, Datum, out var read, out fault))
            return false;
        if (read.Grid is null)
            fault = new(Term.DecimalLatitude, $"{Latitude}, {Longitude}", "The place lies outside every national grid that is known. Is the sign of the longitude missing?");
        else if (SquareFinder.SquareForCircle(read.Grid, read.Point, read.UncertaintyMetres) is { } square)
            place = new(square, read.Point, read.UncertaintyMetres, read.Doubts);
        else
            fault = new(Term.CoordinateUncertaintyInMeters, Uncertainty.ToString(), TooWide(read));
        return fault is null;
    }

    private static string TooWide(CoordinatePlace read) => string.Create(
        CultureInfo.InvariantCulture,
        $"The circle of {read.UncertaintyMetres:0} m round the place fits into no square of the grid, not even of 100 km. Give the grid reference of the square that was meant, or a smaller uncertainty.");

    private bool TryAddPoint(Square square, out Place place, out RowFault? fault)
    {
        place = new(square, null, null, Doubts.None);
        fault = null;
        if (Latitude.IsEmpty)
            return true;
        if (!CoordinatePlace.TryRead(Latitude, Longitude, Uncertainty, Datum, out var read, out fault))
            return false;
        var apart = SquareDistance.Metres(square, read.Point) > read.UncertaintyMetres;
        place = new(square, read.Point, read.UncertaintyMetres, read.Doubts | (apart ? Doubts.PlacesDisagree : Doubts.None));
        return true;
    }
}
