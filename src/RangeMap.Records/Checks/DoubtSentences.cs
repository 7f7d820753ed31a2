namespace RangeMap.Records;

/// <summary>What can be said to a recorder about each doubt without knowing the record.</summary>
internal static class DoubtSentences
{
    private static readonly Dictionary<Doubts, DoubtWords> All = new DoubtWords[]
    {
        new(Doubts.PlacesDisagree, "The grid reference and the coordinates point to different places.",
            "We would like to map the one that you meant.", "Please tell us which of the two is right."),
        new(Doubts.CoordinatesSwapped, "Latitude and longitude seemed to be exchanged, and we read them the other way round.",
            "As written, the place lies outside the countries that we map.", "A word from you that we guessed right is enough."),
        new(Doubts.UncertaintyAssumed, "The record does not say how exact the coordinates are; we took it from their decimals.",
            "We never show a place finer than it is known.", "If you know the accuracy, such as that of your phone, please add it in metres."),
        new(Doubts.NameUncertain, "The name is marked as uncertain, or differs from the identifier beside it.",
            "We keep such records off the species' map until someone has looked.", "A photograph or a specimen, or the name of who can check it, would help."),
        new(Doubts.BeforeFirstYear, "The date lies before the first year from which the species is known in the country.",
            "That would be a remarkable find, or a slip in the year.", "Please check the year. If it is right, a specimen or a photograph would make it a first record."),
        new(Doubts.CountZero, "The count is zero, and the record does not say that the species was looked for and not found.",
            "An absence is worth as much as a find, but they must not be mixed up.", "Please say whether it was seen or not."),
        new(Doubts.RepeatedRow, "The same row stands in the file more than once.",
            "It may have been pasted twice.", "If they are separate observations, a time, a site or a note would tell them apart."),
        new(Doubts.AtSea, "The place lies in the sea.",
            "Often a figure or a letter of a grid reference has slipped.", "Please check the place; if it was on a boat or a small rock, a note says so."),
        new(Doubts.OutOfSeason, "The date lies outside the weeks in which this stage is known.",
            "It may be the earliest or latest ever seen, or another species, or a slip in the date.", "Please check the date; a photograph would make an unusual date certain."),
        new(Doubts.DatumAssumed, "The record does not say on which datum its coordinates are; we took WGS84, as phones use.",
            "Another datum can move a place by up to 250 m.", "Nothing is needed unless they were read from an old map."),
        new(Doubts.DatesDisagree, "The date and the year, month and day beside it do not agree.",
            "We used the date.", "Please tell us which one is right."),
        new(Doubts.ChangedSinceReview, "The species, place or date of the record changed after it had been reviewed.",
            "What was decided then may not hold for what the record says now.", "Nothing is needed; a reviewer will look at it again."),
        new(Doubts.LengthOutOfRange, "The length lies outside the range known for this species and stage.",
            "Length often tells look-alikes apart, and it is easily taken in the wrong unit.", "Please check the length and its unit, and whether another species would fit."),
        new(Doubts.StageImpossible, "The species has no such stage or caste, or the sex does not go with the caste.",
            "One of the words may stand in the wrong column.", "Please check stage, caste and sex."),
        new(Doubts.OutsideKnownArea, "The place lies outside the area from which the species is known.",
            "It may be new there, which everyone would like to know for certain.", "Please check the place and the name; a photograph or a specimen would make it certain."),
        new(Doubts.DuplicateRecord, "Another record has the same species, place, day and recorder.",
            "It may have reached us by two ways.", "Please tell us if both are meant, such as two counts on one day."),
        new(Doubts.TwoFarPlaces, "On this day the same recorder was at two places far from each other.",
            "One date or place may have slipped, or two people share a name.", "Please check date and place, or add initials that tell the two people apart."),
        new(Doubts.EvidenceMissing, "The species is easily taken for another, and the record does not state the evidence that tells them apart.",
            "Without it the record belongs to the pair rather than to one of them.", "Please tell us what you have: a photograph of the marks, or a specimen."),
        new(Doubts.AheadOfFront, "The place lies far ahead of where the species was expected by then.",
            "It may be a jump ahead, which tells most about how it travels, so we want to be certain.", "A photograph or a specimen would make it certain."),
        new(Doubts.DateDefault, "The date is one that many programs fill in where the day was not known.",
            "It would place the record in the wrong week.", "If only the year is known, please give the year alone; if it is right, a word is enough."),
        new(Doubts.PlaceDefault, "The point is exactly the centre of a town, as are several records of the file.",
            "It may have been looked up by the town's name.", "Please give the place where it was seen, or say how far around the town it may have been."),
        new(Doubts.RecorderImplausible, "With this date the records under one name span more years than one person records.",
            "The year may have slipped, or two people share the name.", "Please check the year, or add initials that tell the two people apart."),
        new(Doubts.StageAgainstDate, "This stage is not about at that time of the year, and another one is.",
            "The stage may have been mistaken for another.", "Please check the stage."),
    }.ToDictionary(w => w.Doubt);

    /// <summary>The general words for a doubt.</summary>
    /// <exception cref="KeyNotFoundException">It is not exactly one known doubt.</exception>
    public static DoubtWords Of(Doubts doubt) => All[doubt];
}
