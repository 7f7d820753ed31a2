using RangeMap.Records;
using RangeMap.Store;

namespace RangeMap.Server;

/// <summary>What every decision must have, whichever way it comes.</summary>
internal static class DecisionRules
{
    /// <summary>Passes a decision that says something, and why where a recorder would ask.</summary>
    /// <exception cref="UserException">It does not.</exception>
    public static void Check(Decision decision)
    {
        if (decision.Status is null && decision.TaxonId is null)
            throw new UserException("Nothing is decided.", "status", "Give a status, a taxon, or both.") { IsArgument = true };
        if (string.IsNullOrWhiteSpace(decision.Reason) && decision.Status is (ReviewStatus.Doubtful or ReviewStatus.Rejected))
            throw new UserException("A record is not doubted or rejected without a reason.", "reason", "Say why, so that the recorder can understand it.") { IsArgument = true };
    }
}
