namespace RangeMap.Records;

/// <summary>What the format of a cell makes of a number in it.</summary>
internal enum CellFormat : byte
{
    /// <summary>A number.</summary>
    Number,

    /// <summary>A day, with or without a time of day.</summary>
    Day,

    /// <summary>A time of day without a day.</summary>
    Time,
}
