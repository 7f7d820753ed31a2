namespace RangeMap.Store;

internal static class RecordSql
{
    /// <summary>What a record is read from, in the order in which <see cref="StoredRecordReader"/> takes it; texts stand as numbers.</summary>
    public const string Columns = """
        r.id, r.dataset, r.batch, r.row_number, r.key_high, r.key_low, r.content, r.taxon, r.sent_taxon, r.sent_status, r.square, r.first_day, r.last_day,
        r.present, r.complete_list, r.status, r.doubts, r.recorder, r.determiner, r.stage, r.sex, r.individuals, r.site, r.latitude, r.longitude, r.uncertainty,
        r.length_mm, r.evidence, r.host, r.behaviour
        """;

    private const string Read = $"SELECT {Columns} FROM record AS r";

    public const string DatasetOfNumber = "SELECT id FROM dataset WHERE number = @Number";

    public const string PersonOfNumber = "SELECT name FROM person WHERE number = @Number";

    public const string WordOfNumber = "SELECT text FROM word WHERE number = @Number";

    public const string One = $"{Read} WHERE r.key_high = @KeyHigh AND r.key_low = @KeyLow AND r.dataset = @Dataset";

    /// <summary>What the index of the queue holds; a question must repeat it word for word to be answered from the index.</summary>
    public const string InQueue = "r.status = 0 AND r.doubts <> 0";

    public const string QueueCounts = "SELECT doubts, COUNT(*) AS Records FROM record AS r WHERE r.status = 0 AND r.doubts <> 0 GROUP BY doubts";

    public const string DatasetNumber = "SELECT number FROM dataset WHERE id = @Dataset";

    public const string PersonNumber = "SELECT number FROM person WHERE name = @Recorder";

    public const string TotalByStatus = "SELECT status, COUNT(*) AS Records FROM record GROUP BY status";

    public const string CountByDataset = "SELECT d.id AS Dataset, COUNT(*) AS Records FROM record AS r JOIN dataset AS d ON d.number = r.dataset WHERE r.status <> 3 GROUP BY d.id ORDER BY d.id";

    /// <summary>The number of records that meet conditions.</summary>
    public static string Count(IReadOnlyCollection<string> conditions) => $"SELECT COUNT(*) FROM record AS r{(conditions.Count == 0 ? "" : $" WHERE {string.Join(" AND ", conditions)}")}";

    /// <summary>The conditions of a question in the order in which they are written; each takes its value as a parameter.</summary>
    public static string Page(IEnumerable<string> conditions) => $"{Read} WHERE {string.Join(" AND ", conditions)} ORDER BY r.id LIMIT @Most";

    public static class Condition
    {
        public const string After = "r.id > @AfterRow";
        public const string Dataset = "r.dataset = @DatasetNumber";
        public const string Batch = "r.batch = @Batch";
        public const string Taxa = "r.taxon IN @Taxa";
        public const string WithoutTaxa = "r.taxon NOT IN @WithoutTaxa";
        public const string Status = "r.status = @Status";
        public const string WithoutStatus = "r.status <> @WithoutStatus";
        public const string SomeDoubt = "(r.doubts & @Doubts) <> 0";
        public const string TheseDoubts = "r.doubts = @TheseDoubts";
        public const string Recorder = "r.recorder = @RecorderNumber";
        public const string From = "r.last_day >= @FromDay";
        public const string To = "r.first_day <= @ToDay";
        public const string WhollyFrom = "r.first_day >= @FromDay";
        public const string WhollyTo = "r.last_day <= @ToDay";
        public const string Within = "within(r.square, @WithinCode)";
    }

    /// <summary>
    /// Indexes by which records are found again: for questions about records, decisions, and the next import of the same data set. They are made
    /// apart from a first import, so that maps need not wait for them; keys are random numbers, and one sort beats an insert for each.
    /// </summary>
    public const string MakeLookupIndexes = """
        CREATE INDEX IF NOT EXISTS record_of_key ON record (key_high);
        CREATE INDEX IF NOT EXISTS record_in_queue ON record (doubts, id) WHERE status = 0 AND doubts <> 0;
        CREATE INDEX IF NOT EXISTS record_of_taxon ON record (taxon);
        CREATE INDEX IF NOT EXISTS record_of_recorder ON record (recorder) WHERE recorder IS NOT NULL;
        CREATE INDEX IF NOT EXISTS record_of_batch ON record (batch);
        """;

    public const string CountLookupIndexes =
        "SELECT COUNT(*) FROM sqlite_schema WHERE type = 'index' AND name IN ('record_of_key', 'record_in_queue', 'record_of_taxon', 'record_of_recorder', 'record_of_batch')";

    public const string DropLookupIndexes = """
        DROP INDEX IF EXISTS record_of_key;
        DROP INDEX IF EXISTS record_in_queue;
        DROP INDEX IF EXISTS record_of_taxon;
        DROP INDEX IF EXISTS record_of_recorder;
        DROP INDEX IF EXISTS record_of_batch;
        """;
}
