using System.Globalization;

namespace RangeMap.Grids;

/// <summary>One angle while it is read: degrees, then perhaps minutes and seconds, with a sign or a letter.</summary>
internal struct WrittenAngle
{
    private static readonly double[] Units = [1, 1 / 60.0, 1 / 3600.0];

    private double _degrees;
    private bool _negative, _signed;

    /// <summary>N, S, E, W, or the null character.</summary>
    public char Letter;

    /// <summary>How many numbers: 1 for degrees, 2 with minutes, 3 with seconds.</summary>
    public int Parts;

    /// <summary>Decimals of the last number.</summary>
    public int Decimals;

    /// <summary>The angle, negative in the south and the west.</summary>
    public readonly double Degrees => _negative || Letter is 'S' or 'W' ? -_degrees : _degrees;

    /// <summary>The unit of the last figure, degrees.</summary>
    public readonly double UnitDegrees => Units[Parts - 1] * Math.Pow(10, -Decimals);

    /// <summary>Takes the next number, such as -2 or 18.25; null, or the reason why it cannot.</summary>
    public string? Add(ReadOnlySpan<char> number)
    {
        bool minus = number[0] is '-' or '\u2212', sign = minus || number[0] == '+';
        if (!double.TryParse(sign ? number[1..] : number, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var value))
            return CoordinateFaults.BadNumber(number);
        if (Parts == 3)
            return CoordinateFaults.NotTwo;
        if (Parts > 0 && sign)
            return CoordinateFaults.SignInside;
        if (Parts > 0 && Decimals > 0)
            return CoordinateFaults.DecimalInside;
        if (Parts > 0 && value >= 60)
            return CoordinateFaults.Sixty;
        if (Parts == 0)
            (_signed, _negative) = (sign, minus);
        _degrees += Math.Abs(value) * Units[Parts++];
        var dot = number.IndexOf('.');
        Decimals = dot < 0 ? 0 : Math.Min(number.Length - dot - 1, 15);
        return null;
    }

    /// <summary>Null, or the reason why this is no whole angle.</summary>
    public readonly string? Check() =>
        Parts == 0 ? CoordinateFaults.NotTwo
        : _signed && Letter != '\0' ? CoordinateFaults.SignAndLetter
        : null;
}
