namespace RangeMap.Change;

/// <summary>
/// Where the parameters of an occupancy model stand, all on the logit scale: first occupancy; colonisation and extinction of each step
/// between seasons; detection of each season; slope of detection on the class of visit, where there are several classes.
/// </summary>
internal readonly record struct OccupancyParameters(int Seasons, bool Slope)
{
    internal const int First = 0;

    internal int Count => 3 * Seasons - 1 + (Slope ? 1 : 0);

    internal int SlopeAt => 3 * Seasons - 1;

    internal static int Colonisation(int step) => 1 + 2 * step;

    internal static int Extinction(int step) => 2 + 2 * step;

    internal int Detection(int season) => 2 * Seasons - 1 + season;

    /// <summary>Number of parameters of occupancy; those of detection follow them.</summary>
    internal int OfOccupancy => 2 * Seasons - 1;

    /// <summary>Number of parameters of detection.</summary>
    internal int OfDetection => Count - OfOccupancy;

    internal static double Logistic(double logit) => logit >= 0 ? 1 / (1 + Math.Exp(-logit)) : Math.Exp(logit) / (1 + Math.Exp(logit));

    internal static double Logit(double share) => Math.Log(share / (1 - share));
}
