using System.Globalization;
using RangeMap.Grids;

namespace RangeMap.Records;

/// <summary>Turns the cells of one row into a record, or says why it cannot.</summary>
internal sealed class RowInterpreter(
    RowCells cells, TaxonResolver taxa, RowDates dates, GridReferenceOptions gridOptions, IdentityColumn[] identityColumns, RecordChecks checks, FileChecks? fileChecks,
    long expectedRows)
{
    private static readonly ulong TaxonMark = IdentityColumn.MarkOf("resolved taxon");
    private static readonly ulong DefaultsMark = IdentityColumn.MarkOf("defaults");

    private readonly RowIdentity _identity = new(expectedRows);
    private readonly TextPool _pool = new();
    private readonly SightingCells _sighting = new(cells);

    /// <summary>Names that the list does not have.</summary>
    public UnknownNames UnknownNames { get; } = new();

    /// <summary>Cells about what was seen that were not understood and are kept as written, by term.</summary>
    public IReadOnlyDictionary<Term, long> NotUnderstood => _sighting.NotUnderstood;

    /// <summary>The record of the row that the cells stand on.</summary>
    public bool TryRead(long row, out Record? record, out RowFault? fault)
    {
        record = null;
        var knownBy = KnownBy();
        if (!TryReadTaxon(out var taxon, out var doubts, out fault))
            return false;
        if (!dates.TryRead(cells, out var days, out var dateDoubts, out fault))
            return false;
        if (!PlaceOf().TryRead(gridOptions, out var place, out fault))
            return false;
        var count = ReadCount(cells[Term.IndividualCount]);
        if (!TryReadPresence(count, out var present, out var countDoubts, out fault))
            return false;
        var status = ReviewWords.Read(cells[Term.IdentificationVerificationStatus]);
        var key = _identity.KeyOf(knownBy, out var repeated);
        var (stage, sex) = _sighting.StageAndSex();
        record = new()
        {
            Row = row,
            Key = key,
            Content = ContentOf(taxon!, place.Square, days, status, present),
            Taxon = taxon!,
            Square = place.Square,
            Dates = days,
            Present = present,
            OnCompleteList = _sighting.IsOnCompleteList(),
            Status = status,
            Doubts = doubts | dateDoubts | countDoubts | place.Doubts | (repeated ? Doubts.RepeatedRow : Doubts.None),
            Recorder = _pool.Get(cells[Term.RecordedBy]),
            Determiner = _pool.Get(cells[Term.IdentifiedBy]),
            Stage = stage,
            Sex = sex,
            LengthMm = _sighting.LengthMm(),
            Evidence = _sighting.Evidence(),
            EvidenceLink = _sighting.Link(),
            Host = _sighting.Host(),
            Behaviour = _sighting.Behaviour(),
            Remarks = _sighting.Remarks(),
            Count = count,
            Site = _pool.Get(cells[Term.Locality]),
            Point = place.Point,
            UncertaintyMetres = place.UncertaintyMetres,
        };
        record = Checked(record);
        return true;
    }

    /// <summary>
    /// The record with what the checks find. What they find by the taxon list counts as content, so that the same row under another
    /// list is a change; what they find by its surroundings does not, for those change with every import.
    /// </summary>
    private Record Checked(Record record)
    {
        var byList = checks.FindByList(record);
        var found = byList | checks.FindByPlace(record) | (fileChecks?.Find(record) ?? Doubts.None);
        if (found == Doubts.None)
            return record;
        if (byList != Doubts.None)
            _identity.Add((long)byList);
        return record with { Doubts = record.Doubts | found, Content = byList == Doubts.None ? record.Content : _identity.Hash() };
    }

    /// <summary>A whole number; null for none and for a vague one such as "3+", "c. 20" or "many", which the raw row keeps.</summary>
    internal static int? ReadCount(ReadOnlySpan<char> text)
    {
        if (Figures.TryRead(text, out var plain))
            return plain;
        return double.TryParse(text, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var number) && number <= int.MaxValue && number == Math.Floor(number)
            ? (int)number
            : null;
    }

    private PlaceText PlaceOf() => new()
    {
        GridReference = cells[Term.GridReference],
        Latitude = cells[Term.DecimalLatitude],
        Longitude = cells[Term.DecimalLongitude],
        Uncertainty = cells[Term.CoordinateUncertaintyInMeters],
        Datum = cells[Term.GeodeticDatum],
        Country = cells[Term.CountryCode],
        System = cells[Term.GridSystem],
    };

    /// <summary>The taxonID where the list has it, else the scientific name, else the everyday name.</summary>
    private bool TryReadTaxon(out Taxon? taxon, out Doubts doubts, out RowFault? fault)
    {
        ReadOnlySpan<char> id = cells[Term.TaxonId], name = cells[Term.ScientificName];
        var term = Term.ScientificName;
        if (name.IsEmpty && !cells[Term.VernacularName].IsEmpty)
        {
            term = Term.VernacularName;
            name = cells[term];
        }

        taxon = id.IsEmpty ? null : taxa.FindById(id);
        doubts = Doubts.None;
        fault = null;
        if (name.IsEmpty)
        {
            if (taxon is null)
                fault = id.IsEmpty ? new(term, "", "There is no taxon name.") : new(Term.TaxonId, id.ToString(), "The taxonID is not in the taxon list.");
            return fault is null;
        }

        var resolution = Resolve(name, out var uncertain);
        var disagree = taxon is not null && resolution.Taxon is not null && resolution.Taxon.Id != taxon.Id;
        doubts = uncertain || disagree ? Doubts.NameUncertain : Doubts.None;
        taxon ??= resolution.Taxon;
        if (taxon is not null)
            return true;
        UnknownNames.Add(name, resolution.Suggestions);
        fault = new(term, name.ToString(), resolution.Why!);
        return false;
    }

    private TaxonResolver.Resolution Resolve(ReadOnlySpan<char> name, out bool uncertain)
    {
        var qualifier = cells[Term.IdentificationQualifier];
        if (qualifier.IsEmpty)
        {
            var plain = taxa.Resolve(name);
            uncertain = plain.Uncertain;
            return plain;
        }

        var parts = NameText.From(qualifier);
        var qualified = taxa.Resolve(parts.Aggregate ? $"{name} agg." : name);
        uncertain = qualified.Uncertain || parts.Uncertain;
        return qualified;
    }

    private bool TryReadPresence(int? count, out bool present, out Doubts doubts, out RowFault? fault)
    {
        var text = cells[Term.OccurrenceStatus];
        var stated = PresenceWords.Read(text);
        fault = stated is null && !text.IsEmpty
            ? new(Term.OccurrenceStatus, text.ToString(), "The status must be present, detected, absent or notDetected, or empty for present.")
            : null;
        present = stated ?? count != 0;
        doubts = count == 0 && stated != false ? Doubts.CountZero : Doubts.None;
        return fault is null;
    }

    /// <summary>What the row is known by, from what it says and nothing else.</summary>
    private UInt128 KnownBy()
    {
        _identity.Begin();
        foreach (var (column, mark) in identityColumns)
            _identity.Add(mark, cells.Cell(column));
        return _identity.KnownBy(cells[Term.OccurrenceId]);
    }

    /// <summary>The content, from what the row says and how it was understood, so that a new understanding counts as a change.</summary>
    private UInt128 ContentOf(Taxon taxon, Square square, DayRange days, ReviewStatus status, bool present)
    {
        _identity.Add(TaxonMark, taxon.Id);
        _identity.Add(DefaultsMark, cells.Defaults);
        _identity.Add(square.Code);
        _identity.Add(((long)days.First.DayNumber << 32) | (uint)days.Last.DayNumber);
        _identity.Add(((long)status << 1) | (present ? 1L : 0));
        return _identity.Hash();
    }
}
