using System.Globalization;
using RangeMap.Grids;

namespace RangeMap.Maps;

/// <summary>A layer of tiles beside that of presence: what its features are and say.</summary>
/// <param name="Name">Its name.</param>
/// <param name="Description">What its features are.</param>
/// <param name="Fields">Their properties; the first is each feature's name, and an empty one is left out.</param>
public sealed record TileLayer(string Name, string Description, IReadOnlyList<ExportColumn> Fields)
{
    private static readonly ExportColumn[] OfSquare = [new(PropertyNames.Square, ExportKind.Text, "Text: grid reference of the square"), new(PropertyNames.Grid, ExportKind.Text, "Text: code of the national grid")];

    /// <summary>First finds, and the years that the arrival model gives.</summary>
    public static TileLayer Arrivals { get; } = new("arrivals", "Squares with the year of the first find and, where a model can be fitted, the year in which the taxon probably came",
    [
        .. OfSquare,
        new(PropertyNames.Year, ExportKind.Whole, "Number: first year certainly present; left out where it was not found", Required: false),
        new("reached", ExportKind.Whole, "Number: year by the arrival model that is as likely too early as too late; left out without a model", Required: false),
        new("reachedLow", ExportKind.Whole, "Number: lower end of its 95 % interval; left out where open", Required: false),
        new("reachedHigh", ExportKind.Whole, "Number: upper end; left out where open", Required: false),
    ]);

    /// <summary>Lines of the front.</summary>
    public static TileLayer Fronts { get; } = new("fronts", "The front at the end of a year, by the arrival model",
    [
        new("label", ExportKind.Text, "Text: the year, to write along the line"),
        new(PropertyNames.Year, ExportKind.Whole, "Number: the year"),
        new("foretold", ExportKind.Truth, "True or false: whether the year lies after the last visits"),
    ]);

    /// <summary>Chances.</summary>
    public static TileLayer Forecast { get; } = new("forecast", "Squares where the taxon was never found and may be, by the arrival model; none of sensitive taxa",
    [
        .. OfSquare,
        new(PropertyNames.Year, ExportKind.Whole, "Number: the year that is foretold"),
        new("now", ExportKind.Number, "Number: chance that it is there already, 0 to 1"),
        new("byYear", ExportKind.Number, "Number: chance that it is there by the end of the year, 0 to 1"),
        new("search", ExportKind.Whole, "Number: place in the list of squares to search, from 1; left out where not in it", Required: false),
    ]);

    /// <summary>The layer of effort, for a number of periods.</summary>
    public static TileLayer Effort(int periods) => new("effort", "Squares visited by recorders of the taxon's group, whether it was found or not",
    [
        .. OfSquare,
        new("visits", ExportKind.Whole, "Number: visits, summed over the periods"),
        new("wellSurveyed", ExportKind.Truth, "True or false: whether the square was well surveyed in every period"),
        .. Enumerable.Range(0, periods).Select(i => new ExportColumn(PropertyNames.VisitsIn(i), ExportKind.Whole, string.Create(CultureInfo.InvariantCulture, $"Number: visits in the period of index {i}; left out where there are none"), Required: false)),
    ]);
}

/// <summary>One feature of a layer.</summary>
/// <param name="Square">Its square; of no matter where it has lines.</param>
/// <param name="Lines">Its lines; null for a square.</param>
/// <param name="Values">Its properties, one a field of the layer.</param>
public sealed record TileFeature(Square Square, IReadOnlyList<IReadOnlyList<LatLon>>? Lines, ExportValue[] Values);
