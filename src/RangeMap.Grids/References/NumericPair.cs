using System.Buffers;
using System.Globalization;

namespace RangeMap.Grids;

/// <summary>An easting and a northing in metres as a person wrote them, with or without the letters E and N, before or after the numbers.</summary>
internal ref struct NumericPair
{
    private const int MostFigures = 9;

    private static readonly SearchValues<char> NumberParts = SearchValues.Create("0123456789.");

    private ReadOnlySpan<char> _rest;
    private char _firstLetter, _secondLetter;
    private bool _afterFigure, _lettersFirst;

    /// <summary>Metres; the first and the second number when no letter tells the axes.</summary>
    public double Easting, Northing;

    /// <summary>Figures before the decimal point of the two numbers.</summary>
    public int EastingFigures, NorthingFigures;

    /// <summary>True when a number has a decimal point.</summary>
    public bool HasDecimals;

    /// <summary>True when the letters E and N say which number is which.</summary>
    public bool HasLetters;

    /// <summary>Reads a text (capitals); null, or the reason why it is no pair.</summary>
    public string? Read(ReadOnlySpan<char> text)
    {
        _rest = text;
        if ((ReadNumber(out Easting, out EastingFigures, ref _firstLetter) ?? ReadNumber(out Northing, out NorthingFigures, ref _secondLetter)) is { } fault)
            return fault;
        SkipSeparators();
        if (!_rest.IsEmpty)
            return NumericFaults.NoPair;
        HasLetters = _firstLetter != '\0';
        if (HasLetters != (_secondLetter != '\0') || HasLetters && _firstLetter == _secondLetter)
            return NumericFaults.AxisLetters;
        if (_firstLetter == 'N')
            (Easting, Northing, EastingFigures, NorthingFigures) = (Northing, Easting, NorthingFigures, EastingFigures);
        return null;
    }

    private string? ReadNumber(out double value, out int figures, ref char letter)
    {
        (value, figures) = (0, 0);
        if (SkipSeparators())
            return NumericFaults.Negative;
        _lettersFirst |= _rest is ['E' or 'N', ..];
        if (_lettersFirst)
            TakeLetter(ref letter);
        if (SkipSeparators())
            return NumericFaults.Negative;
        var end = _rest.IndexOfAnyExcept(NumberParts);
        var number = _rest[..(end < 0 ? _rest.Length : end)];
        if (!double.TryParse(number, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out value))
            return NumericFaults.NoPair;
        var dot = number.IndexOf('.');
        HasDecimals |= dot >= 0;
        figures = dot < 0 ? number.Length : dot;
        if (figures is 0 or > MostFigures)
            return NumericFaults.NoPair;
        _rest = _rest[number.Length..];
        _afterFigure = true;
        if (!_lettersFirst)
            TakeUnitAndLetter(ref letter);
        return null;
    }

    /// <summary>Takes spaces, commas, strokes and hyphens; true when a minus sign stands there: a hyphen directly before a figure but not directly behind one (155-463).</summary>
    private bool SkipSeparators()
    {
        while (!_rest.IsEmpty && (char.IsWhiteSpace(_rest[0]) || _rest[0] is ',' or ';' or '/' or ':' or '-' or '\u2013' or '\u2212'))
        {
            if (_rest[0] is '-' or '\u2212' && !_afterFigure && _rest.Length > 1 && char.IsAsciiDigit(_rest[1]))
                return true;
            _afterFigure = false;
            _rest = _rest[1..];
        }

        _afterFigure = false;
        return false;
    }

    private void TakeLetter(ref char letter)
    {
        if (_rest.IsEmpty || _rest[0] is not ('E' or 'N'))
            return;
        letter = _rest[0];
        _rest = _rest[1..];
    }

    /// <summary>After a number: m, E, N, mE or mN, perhaps after a space.</summary>
    private void TakeUnitAndLetter(ref char letter)
    {
        var next = _rest.TrimStart();
        if (next.IsEmpty || next[0] is not ('M' or 'E' or 'N'))
            return;
        _rest = next;
        _afterFigure = false;
        if (!_rest.IsEmpty && _rest[0] == 'M')
            _rest = _rest[1..];
        TakeLetter(ref letter);
    }
}
