using System.Globalization;
using RangeMap.Grids;

namespace RangeMap.Benchmarks;

/// <summary>
/// A CSV file as hundreds of people would send it together: half its places grid references of 10 km to 100 m, half
/// latitude and longitude; 3 in 100 dates are months or years; 5 in 1,000 rows are broken. All invented.
/// </summary>
internal sealed record MixedFile(string Folder, long Rows)
{
    private const int Taxa = 300, Recorders = 3_000, FirstYear = 1975, Years = 50;

    public string Records => Path.Combine(Folder, "mixed.csv");

    public string TaxonList => Path.Combine(Folder, "mixed-taxa.csv");

    /// <summary>A further file for the same data set, of 10,000 rows.</summary>
    public string Addition => Path.Combine(Folder, "addition.csv");

    public const int AddedRows = 10_000;

    /// <summary>Makes the files unless an earlier run did.</summary>
    public static MixedFile Of(long rows)
    {
        var folder = Path.Combine(Path.GetTempPath(), "rangemap-benchmarks", string.Create(CultureInfo.InvariantCulture, $"mixed-{rows}"));
        var file = new MixedFile(folder, rows);
        if (File.Exists(file.Addition))
            return file;
        Directory.CreateDirectory(folder);
        var list = Enumerable.Range(0, Taxa).Select(i => $"{i},{Name(i)},invented,worker 10-45; queen 5-45; male 20-45");
        File.WriteAllLines(file.TaxonList, list.Prepend("taxonID,scientificName,group,season"));
        Write(file.Records, rows, first: 0, seed: 1);
        Write(file.Addition, AddedRows, first: rows, seed: 2);
        return file;
    }

    private static void Write(string path, long rows, long first, int seed)
    {
        var chance = new Random(seed);
        var grid = NationalGrid.Get(GridId.British);
        using var writer = new StreamWriter(path);
        writer.WriteLine("occurrenceID,scientificName,eventDate,gridReference,decimalLatitude,decimalLongitude,recordedBy,caste,individualCount");
        for (long row = 0; row < rows; row++)
        {
            var place = new EastNorth(chance.Next(420_000, 600_000), chance.Next(170_000, 400_000));
            var recorder = (int)(Recorders * chance.NextDouble() * chance.NextDouble());
            var day = new DateOnly(FirstYear, 1, 1).AddDays((int)(Years * 365 * Math.Sqrt(chance.NextDouble())));
            var date = chance.Next(100) < 3 ? day.ToString(chance.Next(2) == 0 ? "yyyy" : "yyyy-MM", CultureInfo.InvariantCulture) : day.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);
            var caste = chance.Next(4) switch { 0 => "queen", 1 => "male", _ => "worker" };
            var name = Name(chance.Next(Taxa));
            if (chance.Next(1000) < 5)
                Break(chance, ref name, ref date);
            var where = chance.Next(2) == 0 ? $"{Reference(chance, place)},," : LatLon(grid.ToLatLon(place));
            writer.WriteLine(string.Create(CultureInfo.InvariantCulture, $"m{first + row},{name},{date},{where},Invented Recorder {recorder},{caste},{chance.Next(1, 5)}"));
        }
    }

    private static void Break(Random chance, ref string name, ref string date)
    {
        if (chance.Next(2) == 0)
            name = "Nulla ignota";
        else
            date = "31/02/1999";
    }

    private static string Reference(Random chance, EastNorth place)
    {
        var size = chance.Next(10) switch { 0 => SquareSize.Km10, 1 => SquareSize.Km2, <= 5 => SquareSize.Km1, _ => SquareSize.M100 };
        return Square.At(GridId.British, size, place).ToString();
    }

    private static string LatLon(LatLon place) => string.Create(CultureInfo.InvariantCulture, $",{place.Latitude:0.00000},{place.Longitude:0.00000}");

    private static string Name(int number) => string.Create(CultureInfo.InvariantCulture, $"Mixta exempla{(char)('a' + number / 26)}{(char)('a' + number % 26)}");
}
