namespace RangeMap.Change;

/// <summary>All sentences about arrivals known as intervals.</summary>
internal static class ArrivalWords
{
    internal const string Unsound = "a square holds a distance or an interval of arrival that is not usable";

    internal const string OneSided = "too few squares tell when the species was not there yet, or too few when it was";

    internal const string Separable = "a straight line passes through the interval of every square, so the scatter of arrivals cannot be told and no line is the best";

    internal const string NotSettled = "the fit does not settle: the intervals do not tell one line from another";
}
