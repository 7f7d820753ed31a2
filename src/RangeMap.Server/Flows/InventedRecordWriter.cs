using System.Globalization;
using RangeMap.Change;
using RangeMap.Grids;

namespace RangeMap.Server;

/// <summary>Writes observations of the invented world as rows of a CSV file, in the mixed forms that recorders use.</summary>
internal sealed class InventedRecordWriter
{
    private const string Header =
        "occurrenceID,scientificName,eventDate,gridReference,decimalLatitude,decimalLongitude,coordinateUncertaintyInMeters,geodeticDatum,recordedBy,lifeStage,sex,individualCount,lengthMm,evidence,plant,identificationVerificationStatus";

    private readonly TextWriter _writer;
    private readonly string[] _names;
    private readonly string[] _aggregates;

    /// <summary>Begins the file with its header.</summary>
    public InventedRecordWriter(TextWriter writer, SimulatedWorld world)
    {
        _writer = writer;
        _names = [.. world.Species.Select(species => species.Name)];
        _aggregates = [.. world.Species.Select(species => species.Aggregate ?? species.Name)];
        writer.WriteLine(Header);
    }

    /// <summary>Writes one observation.</summary>
    public void Write(in SimulatedObservation seen, long number)
    {
        var visit = seen.Visit;
        Span<char> row = stackalloc char[400];
        var cells = new RowCursor(row);
        cells.Text("inv-");
        cells.Number(number, "000000");
        cells.End();
        cells.Text(seen.ToAggregate ? _aggregates[seen.NamedAs] : _names[seen.NamedAs]);
        cells.End();
        WriteDate(ref cells, visit);
        WritePlace(ref cells, visit);
        cells.Text(InventedRecorders.NameOf(visit.Recorder));
        cells.End();
        cells.Text(InventedTaxonList.StageName(seen.Stage));
        cells.End();
        cells.Text(seen.Sex switch { InventedSex.Female => "female", InventedSex.Male => "male", _ => "" });
        cells.End();
        cells.Number(seen.Count, "0");
        cells.End();
        if (seen.LengthMm is { } length)
            cells.Number(length, "0.0");
        cells.End();
        cells.Text(seen.Evidence switch { InventedEvidence.Specimen => "specimen", InventedEvidence.Photograph => "photograph", _ => "sighting" });
        cells.End();
        cells.Text(seen.Plant is { } plant ? InventedScenario.Plants[plant] : "");
        cells.End();
        cells.Text(seen.Review switch { InventedReview.Confirmed => "confirmed", InventedReview.Doubtful => "doubtful", InventedReview.Rejected => "rejected", _ => "" });
        _writer.Write(row[..cells.Length]);
        _writer.Write('\n');
    }

    private static void WriteDate(ref RowCursor cells, in SimulatedVisit visit)
    {
        var day = DateOnly.FromDayNumber(visit.Day);
        cells.Number(day.Year, "0000");
        if (visit.Written != WrittenDate.Year)
            cells.Number(day.Month, "-00");
        if (visit.Written == WrittenDate.Day)
            cells.Number(day.Day, "-00");
        cells.End();
    }

    private static void WritePlace(ref RowCursor cells, in SimulatedVisit visit)
    {
        var place = new EastNorth(visit.Easting, visit.Northing);
        if (!visit.AsLatLon)
        {
            GridReference.TryFormat(Square.At(visit.Grid, (SquareSize)visit.PrecisionMetres, place), cells.Rest, out var length);
            cells.Advance(length);
            cells.Skip(5);
            return;
        }

        var position = NationalGrid.Get(visit.Grid).ToLatLon(place);
        cells.End();
        cells.Number(position.Latitude, "0.00000");
        cells.End();
        cells.Number(position.Longitude, "0.00000");
        cells.End();
        cells.Number(visit.PrecisionMetres / 2, "0");
        cells.End();
        cells.Text("WGS84");
        cells.End();
    }

    /// <summary>Fills a row without making strings: ten million rows are written this way.</summary>
    private ref struct RowCursor(Span<char> row)
    {
        private readonly Span<char> _row = row;

        public int Length { get; private set; }

        public readonly Span<char> Rest => _row[Length..];

        public void Advance(int length) => Length += length;

        public void Text(ReadOnlySpan<char> text)
        {
            text.CopyTo(Rest);
            Length += text.Length;
        }

        public void Number<T>(T number, string format)
            where T : ISpanFormattable
        {
            if (!number.TryFormat(Rest, out var length, format, CultureInfo.InvariantCulture))
                throw new InvalidOperationException("A row of the invented world is longer than its buffer.");
            Length += length;
        }

        public void End() => _row[Length++] = ',';

        /// <summary>Ends the cell at hand and leaves those after it empty.</summary>
        public void Skip(int cells)
        {
            for (var i = 0; i < cells; i++)
                End();
        }
    }
}
