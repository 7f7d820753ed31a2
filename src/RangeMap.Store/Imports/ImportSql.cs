namespace RangeMap.Store;

internal static class ImportSql
{
    public const string FindPerson = "SELECT number FROM person WHERE name = @text";

    public const string AddPerson = "INSERT INTO person (name) VALUES (@text) RETURNING number";

    public const string FindWord = "SELECT number FROM word WHERE text = @text";

    public const string AddWord = "INSERT INTO word (text) VALUES (@text) RETURNING number";

    public const string FindDataset = "SELECT number FROM dataset WHERE id = @Id";

    public const string AddDataset = "INSERT INTO dataset (id) VALUES (@Id) RETURNING number";

    public const string AnyRecordOfDataset = "SELECT EXISTS (SELECT 1 FROM batch WHERE dataset = @Dataset AND accepted > 0)";

    public const string AnyRecord = "SELECT EXISTS (SELECT 1 FROM record)";

    public const string SameFileBefore =
        "SELECT number FROM batch WHERE dataset = @Dataset AND file_hash = @FileHash AND number <> @Batch AND undone_at IS NULL ORDER BY number DESC LIMIT 1";

    public const string AddBatch = """
        INSERT INTO batch (dataset, file_name, file_hash, imported_at, header)
        VALUES (@Dataset, @FileName, '', @ImportedAt, '') RETURNING number
        """;

    public const string FinishBatch = """
        UPDATE batch SET file_hash = @FileHash, header = @Header, rows_read = @Read, accepted = @Accepted, refused = @Refused, updated = @Updated,
            unchanged = @Unchanged, mapping = @Mapping, doubts = @Doubts, made_by = @MadeBy, seconds = @Seconds, form = @Form, stated = @Stated, citation = @Citation,
            notes = @Notes, options = @Options
        WHERE number = @Batch
        """;

    /// <summary>Keeps the commit of an import from moving all that it wrote into the database before it returns.</summary>
    public const string KeepInLog = "PRAGMA wal_autocheckpoint = 0";

    /// <summary>Moves what readers allow from the log into the database.</summary>
    public const string Checkpoint = "PRAGMA wal_checkpoint(PASSIVE)";

    public const string AddSourceBlock =
        "INSERT INTO source_block (batch, first_row, row_count, data) VALUES (@Batch, @FirstRow, @RowCount, @Data)";

    public const string AddRefusal = """
        INSERT INTO refusal (batch, row_number, line, field, value, reason, raw)
        VALUES (@Batch, @Row, @Line, @Field, @Value, @Reason, @Raw)
        """;

    public const string FindByKey = "SELECT id, key_low, content, dataset FROM record WHERE key_high = ?1";

    /// <summary>What a version of a record consists of.</summary>
    internal const string Columns =
        "batch, row_number, dataset, key_high, key_low, content, taxon, square, first_day, last_day, present, status, doubts, "
        + "recorder, determiner, stage, sex, individuals, site, latitude, longitude, uncertainty, sent_taxon, sent_status, "
        + "length_mm, evidence, host, behaviour, complete_list";

    /// <summary>What the cube, the visits and the decisions need of a record; the members of <see cref="RecordRow"/>.</summary>
    internal const string RowColumns =
        "id, dataset, key_high AS KeyHigh, key_low AS KeyLow, taxon, square, first_day AS FirstDay, last_day AS LastDay, present, status, doubts, "
        + "recorder, content, sent_taxon AS SentTaxon, sent_status AS SentStatus, complete_list AS CompleteList";

    /// <summary>Number of <see cref="Columns"/>.</summary>
    public const int ColumnCount = 29;

    private const string Values = "(?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?)";

    /// <summary>The number that the next record gets.</summary>
    public const string NextRecord = "SELECT coalesce(max(id), 0) + 1 FROM record";

    public static string AddRecords(int rows) => $"INSERT INTO record ({Columns}) VALUES {string.Join(", ", Enumerable.Repeat(Values, rows))}";

    public const string ChangeRecord = $"UPDATE record SET ({Columns}) = {Values} WHERE id = ?";

    public const string KeepReplaced =
        $"INSERT INTO replaced_record (replaced_by_batch, id, {Columns}) SELECT @Batch, id, {Columns} FROM record WHERE id = @Id";

    /// <summary>True when a record of another import says the same of taxon, place, day, recorder, stage and sex.</summary>
    public const string HasTwin = """
        SELECT EXISTS (
            SELECT 1 FROM record AS r JOIN record AS o ON o.recorder = r.recorder
            WHERE r.id = @record AND r.recorder IS NOT NULL AND o.recorder IS NOT NULL AND o.id <> r.id AND o.batch <> r.batch AND o.taxon = r.taxon
                AND o.square = r.square AND o.first_day = r.first_day AND o.last_day = r.last_day AND o.present = r.present AND o.stage IS r.stage AND o.sex IS r.sex)
        """;

    public const string AddDoubts = "UPDATE record SET doubts = doubts | @Doubts WHERE id = @Id";

    public const string ReadForCube = $"SELECT {RowColumns} FROM record WHERE id = @Id";
}
