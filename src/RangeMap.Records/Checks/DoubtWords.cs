namespace RangeMap.Records;

/// <summary>A doubt in kind words, for the recorder and the reviewer.</summary>
/// <param name="Doubt">The doubt.</param>
/// <param name="What">What was noticed, with the particulars of the record where they can be had.</param>
/// <param name="Why">Why we ask.</param>
/// <param name="Help">What would help.</param>
public sealed record DoubtWords(Doubts Doubt, string What, string Why, string Help)
{
    /// <summary>All in one paragraph.</summary>
    public string Paragraph => $"{What} {Why} {Help}";
}
