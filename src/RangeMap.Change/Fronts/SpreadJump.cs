namespace RangeMap.Change;

/// <summary>A square found far ahead of the front and of every earlier square: carried, brought a second time, or a mistake.</summary>
/// <param name="X">Kilometres east of its centre.</param>
/// <param name="Y">Kilometres north of its centre.</param>
/// <param name="Time">When it was first found.</param>
/// <param name="KmAhead">Kilometres beyond the line of the front at that time.</param>
/// <param name="KmFromNearest">Kilometres from the nearest square found before.</param>
/// <param name="Squares">Squares far ahead that spread from it, itself among them; more than one tells of a second introduction.</param>
public sealed record SpreadJump(double X, double Y, double Time, double KmAhead, double KmFromNearest, int Squares);
