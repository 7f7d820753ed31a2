namespace RangeMap.Change;

/// <summary>An occupancy model at its maximum of (penalised) likelihood.</summary>
internal sealed class OccupancyFit
{
    private const int MostSteps = 60;
    private const double Settled = 1e-8;

    private readonly double[,] _covariance;

    private OccupancyFit(OccupancyParameters parameters, double[] place, double[,] covariance, double logLikelihood) =>
        (Parameters, Place, _covariance, LogLikelihood) = (parameters, place, covariance, logLikelihood);

    internal OccupancyParameters Parameters { get; }

    /// <summary>The parameters, on the logit scale.</summary>
    internal double[] Place { get; }

    /// <summary>Logarithm of the likelihood, penalty included.</summary>
    internal double LogLikelihood { get; }

    /// <summary>A parameter as a chance.</summary>
    internal double Chance(int parameter) => OccupancyParameters.Logistic(Place[parameter]);

    /// <summary>Variance of a parameter on the logit scale.</summary>
    internal double Variance(int parameter) => _covariance[parameter, parameter];

    /// <summary>
    /// Newton's steps, halved while they lose likelihood; where the observed information is not positive definite, the step of the
    /// information of occupancy seen. Null where they do not settle.
    /// </summary>
    /// <param name="sites">The data, with at least one find.</param>
    /// <param name="prior">Weight of the Jeffreys penalty on occupancy, 0 to 1.</param>
    internal static OccupancyFit? To(OccupancySites sites, double prior)
    {
        OccupancyLikelihood likelihood = new(sites, prior), trial = new(sites, prior);
        var place = Start(sites, likelihood.At);
        likelihood.Evaluate(place);
        for (var step = 0; step < MostSteps; step++)
        {
            var observed = PositiveMatrix.Inverse(likelihood.Information);
            if ((observed ?? PositiveMatrix.Inverse(likelihood.Complete)) is not { } inverse)
                return null;

            var move = PositiveMatrix.Times(inverse, likelihood.Score);
            if (observed is not null && move.Max(Math.Abs) < Settled)
                return new(likelihood.At, place, observed, likelihood.LogLikelihood);
            if (!TryMove(place, move, likelihood, trial))
                return null;
            (likelihood, trial) = (trial, likelihood);
        }

        return null;
    }

    /// <summary>Chance of occupancy by season, with the slopes of each on all parameters.</summary>
    internal (double Psi, double[] Slopes)[] Occupancy()
    {
        var seasons = new (double Psi, double[] Slopes)[Parameters.Seasons];
        var psi = Chance(OccupancyParameters.First);
        var slopes = new double[Place.Length];
        slopes[OccupancyParameters.First] = psi * (1 - psi);
        seasons[0] = (psi, slopes);
        for (var season = 1; season < seasons.Length; season++)
        {
            double colonised = Chance(OccupancyParameters.Colonisation(season - 1)), lost = Chance(OccupancyParameters.Extinction(season - 1));
            slopes = Array.ConvertAll(slopes, slope => slope * (1 - lost - colonised));
            slopes[OccupancyParameters.Colonisation(season - 1)] = (1 - psi) * colonised * (1 - colonised);
            slopes[OccupancyParameters.Extinction(season - 1)] = -psi * lost * (1 - lost);
            psi = psi * (1 - lost) + (1 - psi) * colonised;
            seasons[season] = (psi, slopes);
        }

        return seasons;
    }

    /// <summary>Covariance of two quantities with these slopes.</summary>
    internal double Covariance(double[] slopesA, double[] slopesB) => PositiveMatrix.Form(slopesA, _covariance, slopesB);

    /// <summary>Mean over the sites of the chance that the visits of a season find the taxon where it is.</summary>
    internal double MeanDetection(OccupancySites sites, int season)
    {
        var classes = new VisitClasses(Place, Parameters, sites.Classes);
        double sum = 0;
        for (var site = 0; site < sites.Count; site++)
            sum += classes.Detection(season, sites.Visits(site));
        return sum / sites.Count;
    }

    private static bool TryMove(double[] place, double[] move, OccupancyLikelihood from, OccupancyLikelihood to)
    {
        var next = new double[place.Length];
        // No step of more than three logits: far out the likelihood is flat and its slopes tell little.
        for (var part = Math.Min(1, 3 / move.Max(Math.Abs)); part > 1e-6; part /= 2)
        {
            for (var i = 0; i < next.Length; i++)
                next[i] = place[i] + part * move[i];
            to.Evaluate(next);
            // At the top, rounding may lose the last digits of the likelihood.
            if (!(to.LogLikelihood >= from.LogLikelihood - 1e-9 * Math.Abs(from.LogLikelihood)))
                continue;
            next.CopyTo(place, 0);
            return true;
        }

        return false;
    }

    // Occupancy from the squares with finds, detection from the visits to them.
    private static double[] Start(OccupancySites sites, OccupancyParameters at)
    {
        var place = new double[at.Count];
        for (var season = 0; season < at.Seasons; season++)
        {
            var (found, visits, finds) = Tally(sites, season);
            place[at.Detection(season)] = OccupancyParameters.Logit((finds + 0.5) / (visits + 1.0));
            if (season == 0)
                place[OccupancyParameters.First] = OccupancyParameters.Logit((found + 1.0) / (sites.Count + 2.0));
            else
                place[OccupancyParameters.Colonisation(season - 1)] = place[OccupancyParameters.Extinction(season - 1)] = OccupancyParameters.Logit(0.1);
        }

        return place;
    }

    private static (int Found, int Visits, int Finds) Tally(OccupancySites sites, int season)
    {
        var (found, visits, finds, classes) = (0, 0, 0, sites.Classes.Length);
        for (var site = 0; site < sites.Count; site++)
        {
            if (sites.Finds(site).IsEmpty)
                continue;
            int hits = 0, all = 0;
            for (var i = season * classes; i < (season + 1) * classes; i++)
                (hits, all) = (hits + sites.Finds(site)[i], all + sites.Visits(site)[i]);
            if (hits > 0)
                (found, visits, finds) = (found + 1, visits + all, finds + hits);
        }

        return (found, visits, finds);
    }
}
