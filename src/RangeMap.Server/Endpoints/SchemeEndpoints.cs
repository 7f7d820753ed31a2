namespace RangeMap.Server;

/// <summary>Settings of the scheme, for its organiser.</summary>
internal static class SchemeEndpoints
{
    public static void MapScheme(this RouteGroupBuilder personal)
    {
        var scheme = personal.MapGroup("/scheme").Require(Right.Organise).WithTags("Scheme");
        scheme.MapGet("", (DataFolder folder, TimeProvider clock) => SchemeJson.Of(new(folder, clock)))
            .WithSummary("The periods that maps begin with and every change of them.");
        scheme.MapPut("/periods", Set).WithSummary("Sets the periods that maps begin with: named, oldest first, without overlap.");
        scheme.MapPost("/periods/restore", Restore).WithSummary("Goes back to the periods of an earlier change, or with 0 to those that the program brings.");
    }

    private static SchemeJson Set(HttpContext http, CurrentData current, DataFolder folder, TimeProvider clock, SetPeriodsJson set)
    {
        var periods = new SchemePeriods(folder, clock);
        periods.Set(set.Periods ?? [], set.GapsAreMeant, http.Caller().Name!, set.Reason, set.Seen);
        current.LookAgain();
        return SchemeJson.Of(periods);
    }

    private static SchemeJson Restore(HttpContext http, CurrentData current, DataFolder folder, TimeProvider clock, RestorePeriodsJson restore)
    {
        var periods = new SchemePeriods(folder, clock);
        periods.Restore(restore.Number, http.Caller().Name!, restore.Reason, restore.Seen);
        current.LookAgain();
        return SchemeJson.Of(periods);
    }
}

/// <summary>Periods to set.</summary>
/// <param name="Periods">The periods, oldest first.</param>
/// <param name="Reason">Why.</param>
/// <param name="GapsAreMeant">True where days between them belong to no period on purpose.</param>
/// <param name="Seen">Number of the change that was seen as the newest; with it, nothing is changed where somebody else was faster.</param>
internal sealed record SetPeriodsJson(IReadOnlyList<NamedPeriod>? Periods, string? Reason, bool GapsAreMeant = false, long? Seen = null);

/// <summary>Periods to go back to.</summary>
/// <param name="Number">Number of the change; 0 for what the program brings.</param>
/// <param name="Reason">Why.</param>
/// <param name="Seen">As for setting them.</param>
internal sealed record RestorePeriodsJson(long Number, string? Reason, long? Seen = null);
