namespace RangeMap.Records;

/// <summary>What came of trying to read a text as one form of date.</summary>
internal enum DateForm
{
    /// <summary>The text has another form.</summary>
    Other,

    /// <summary>The text has this form and names days that exist.</summary>
    Understood,

    /// <summary>The text has this form and cannot be a date; the reason is given.</summary>
    Wrong,
}
