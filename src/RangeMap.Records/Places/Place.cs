using RangeMap.Grids;

namespace RangeMap.Records;

/// <summary>Where a row says that the observation was made.</summary>
/// <param name="Square">The finest square that the row supports.</param>
/// <param name="Point">The point, where the row gave coordinates.</param>
/// <param name="UncertaintyMetres">Radius that the coordinates are good for.</param>
/// <param name="Doubts">What is doubtful about the place.</param>
internal readonly record struct Place(Square Square, LatLon? Point, double? UncertaintyMetres, Doubts Doubts);
