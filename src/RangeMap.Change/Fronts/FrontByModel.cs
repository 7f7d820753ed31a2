namespace RangeMap.Change;

/// <summary>The speed of a fitted arrival model, in the form of the other estimates (docs/methods/arrival-surface.md).</summary>
internal static class FrontByModel
{
    internal static SpreadEstimate Measure(FirstRecords records, ArrivalAnswer model)
    {
        if (records.Fault is { } fault)
            return SpreadEstimate.Refuse(SpreadMethods.ArrivalModel, records, fault);
        if (model.Fit is not { } fit)
            return SpreadEstimate.Refuse(SpreadMethods.ArrivalModel, records, model.Refused!);
        return ArrivalSpeed.Of(fit) is { } speed
            ? SpreadEstimate.Of(SpreadMethods.ArrivalModel, records, speed.KmPerYear, speed.Interval, SpreadWords.ModelNote) with { N = speed.Squares }
            : SpreadEstimate.Refuse(SpreadMethods.ArrivalModel, records, SpreadWords.NoBound);
    }
}
