namespace RangeMap.Change;

/// <summary>Names for the recorders of the simulated world, put together from syllables; no real person is meant.</summary>
public static class InventedRecorders
{
    private const string Initials = "ABDEFGHKLMNPRSTV";

    private static readonly string[] Beginnings = ["Orv", "Tal", "Bresk", "Mun", "Quel", "Harv", "Dask", "Ister", "Pell", "Wend", "Yarr", "Cob", "Fenn", "Lusk", "Grav", "Strom"];

    private static readonly string[] Endings = ["ane", "ick", "ondry", "ulph", "essen", "aby", "orthy", "imble", "egar", "ather", "owen", "isk", "unt", "elby", "ask", "oway"];

    /// <summary>The name of a recorder; different for the first 4,096, and then the same ones with a number.</summary>
    /// <param name="recorder">Index, at least 0.</param>
    public static string NameOf(int recorder)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(recorder);
        // 2,741 is odd, so that it visits all 4,096 names in an order without pattern.
        var mixed = (int)(recorder * 2741L % 4096);
        var name = $"{Initials[mixed % 16]}. {Beginnings[mixed / 16 % 16]}{Endings[mixed / 256]}";
        return recorder < 4096 ? name : $"{name} {recorder / 4096 + 1}";
    }
}
