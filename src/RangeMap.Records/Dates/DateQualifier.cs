namespace RangeMap.Records;

/// <summary>What a word or sign before a date makes of it.</summary>
internal enum DateQualifier
{
    /// <summary>There is none.</summary>
    None,

    /// <summary>The days before its first day, from 1600.</summary>
    Before,

    /// <summary>All days to its last day, from 1600.</summary>
    Until,

    /// <summary>The days after its last day, to the day of the import.</summary>
    After,

    /// <summary>All days from its first day, to the day of the import.</summary>
    Since,

    /// <summary>Thereabouts.</summary>
    Circa,
}
