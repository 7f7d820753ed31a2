using RangeMap.Records;
using RangeMap.Store;

namespace RangeMap.Server;

/// <summary>Deciding on records, one or many, and taking decisions back.</summary>
internal static class ReviewEndpoints
{
    private const int MostAtOnce = 10_000;

    public static void MapReviews(this RouteGroupBuilder api)
    {
        var one = api.MapGroup("/records/{id}/reviews").Require(Right.Review).WithTags("Review");
        one.MapPost("", DecideOne).WithSummary("Decides on one record: a status, a taxon that it is identified as afresh, or both, with a reason.");
        var reviews = api.MapGroup("/reviews").Require(Right.Review).WithTags("Review");
        reviews.MapPost("", DecideMany).WithSummary("Decides on many records at once.");
        reviews.MapGet("", Newest).WithSummary("The newest decisions.");
        reviews.MapDelete("/{number:long}", Reverse).WithSummary("Takes a decision back: each record stands as it did before.");
        reviews.MapGet("/summary", Summary).WithSummary("How many records wait in the queue, by doubt.");
        api.MapGroup("/me").Require(Right.None).WithTags("Access")
            .MapGet("", (HttpContext http) => new CallerJson(http.Caller().Name!, RightText.Words(http.Caller().Rights)))
            .WithSummary("Whose token this is and what it allows.");
    }

    private static RecordDetailJson DecideOne(HttpContext http, DataFolder folder, CurrentData current, TimeProvider clock, string id, ReviewJson review)
    {
        var name = RecordAsk.Id(id);
        var answer = Decide(http, folder, current, clock, [new(name, RecordAsk.Version(review.Version))], review.Status, review.Taxon, review.Reason);
        if (answer.Missing.Count > 0)
            throw RecordAsk.Unknown(id);
        if (answer.ChangedMeanwhile.Count > 0)
        {
            throw new UserException(
                "The record changed after you had seen it.", "version", "Look at it again, then decide; nothing was decided.", StatusCodes.Status409Conflict);
        }

        return DescribeRecord.Answer(folder, current.Now(), new RecordStore(folder.Database).Read(name) ?? throw RecordAsk.Unknown(id));
    }

    private static DecisionJson DecideMany(HttpContext http, DataFolder folder, CurrentData current, TimeProvider clock, ManyReviewsJson review)
    {
        if (review.Records is not { Count: > 0 and <= MostAtOnce })
            throw new UserException(FormattableString.Invariant($"A decision takes 1 to {MostAtOnce:N0} records."), "records", "Name the records with their versions.");
        var marks = review.Records.Select(record => new RecordMark(RecordAsk.Id(record.Id), RecordAsk.Version(record.Version))).ToList();
        return DecisionJson.Of(Decide(http, folder, current, clock, marks, review.Status, review.Taxon, review.Reason));
    }

    private static DecisionAnswer Decide(
        HttpContext http, DataFolder folder, CurrentData current, TimeProvider clock, IReadOnlyList<RecordMark> records, string? status, string? taxon, string? reason)
    {
        var taxonId = string.IsNullOrEmpty(taxon) ? null : current.Now().Find(taxon).Id;
        var decision = new Decision(records, http.Caller().Name!, reason?.Trim() ?? "") { Status = RecordAsk.Status(status, "status"), TaxonId = taxonId };
        DecisionRules.Check(decision);
        var answer = new DecisionStore(folder.Database, clock).Decide(decision);
        current.LookAgain();
        return answer;
    }

    private static DecisionJson Reverse(HttpContext http, DataFolder folder, CurrentData current, TimeProvider clock, long number, string? reason = null)
    {
        try
        {
            var answer = new DecisionStore(folder.Database, clock).Reverse(number, http.Caller().Name!, reason?.Trim() ?? "");
            current.LookAgain();
            return DecisionJson.Of(answer);
        }
        catch (StoreException problem) when (problem.IsOfRequest)
        {
            throw new UserException(problem.Message, "number", problem.Mend, StatusCodes.Status409Conflict);
        }
    }

    private static DecisionSetListJson Newest(DataFolder folder, int limit = 50) =>
        new(new DecisionHistory(folder.Database).Newest(Math.Clamp(limit, 1, 500)));

    private static QueueSummaryJson Summary(DataFolder folder)
    {
        var counts = new RecordStore(folder.Database).QueueCounts();
        var byDoubt = DoubtCatalogue.All.Select(entry => new QueueDoubtJson(
            entry.Code, entry.Title, entry.Weight, entry.Serious, counts.Where(pair => (pair.Key & entry.Doubt) != 0).Sum(pair => pair.Value)));
        return new(counts.Where(pair => DoubtCatalogue.WeightOf(pair.Key) > 0).Sum(pair => pair.Value), [.. byDoubt.Where(doubt => doubt.Records > 0)]);
    }
}

/// <summary>A decision on one record.</summary>
/// <param name="Status">unreviewed, confirmed, doubtful or rejected; null keeps it.</param>
/// <param name="Reason">Why, for the recorder to read; needed for doubtful and rejected.</param>
/// <param name="Taxon">Identifier or scientific name that the record is identified as afresh; null keeps it.</param>
/// <param name="Version">The version that was seen; without one, the decision is on whatever the record says now.</param>
internal sealed record ReviewJson(string? Status, string? Reason, string? Taxon, string? Version);

/// <summary>A decision on many records.</summary>
internal sealed record ManyReviewsJson(IReadOnlyList<RecordMarkJson>? Records, string? Status, string? Reason, string? Taxon);

/// <summary>A record as it was seen.</summary>
internal sealed record RecordMarkJson(string Id, string? Version);

/// <summary>What a decision did.</summary>
internal sealed record DecisionJson(long? Decision, int Changed, IReadOnlyList<string> Missing, IReadOnlyList<string> ChangedMeanwhile, IReadOnlyList<string> DecidedLater)
{
    public static DecisionJson Of(DecisionAnswer answer) => new(answer.Number, answer.Changed, Names(answer.Missing), Names(answer.ChangedMeanwhile), Names(answer.DecidedLater));

    private static List<string> Names(IReadOnlyList<RecordId> records) => [.. records.Select(record => record.ToString())];
}

/// <summary>Decisions, newest first.</summary>
internal sealed record DecisionSetListJson(IReadOnlyList<DecisionSet> Decisions);

/// <summary>The review queue in numbers.</summary>
internal sealed record QueueSummaryJson(long Waiting, IReadOnlyList<QueueDoubtJson> ByDoubt);

/// <summary>How many unreviewed records have a doubt.</summary>
internal sealed record QueueDoubtJson(string Code, string Title, int Weight, bool Serious, long Records);

/// <summary>Who asks.</summary>
internal sealed record CallerJson(string Name, IReadOnlyList<string> Rights);
