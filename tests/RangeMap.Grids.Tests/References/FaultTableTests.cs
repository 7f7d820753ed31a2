using System.Reflection;

namespace RangeMap.Grids.Tests;

/// <summary>Every reason that is always worded alike is given for some text, and every reason says how to mend the text. Those with figures and letters in them stand with the tests of their readers.</summary>
public sealed class FaultTableTests
{
    private static readonly (string Text, GridReferenceOptions Options)[] BadReferences =
    [
        ("", default), ("3", default), ("5 700", default), ("TQ 30.8 80.1", default), ("I33", default), ("TQ38O", default), ("ITM", default), ("TQ 1234567890 1234567890", default),
        ("10kmE342E321", default), ("EPSG:27700 1", default), ("EPSG:27700 530800E 180100", default), ("EPSG:27700 -1 2", default), ("54.1, -2.3", default),
        ("UTM 565145 5448517", default), ("30U", default), ("EPSG:3035 3962799 2999718", default), (".", default), ("#", default),
        ("/ 5308", default), ("LONDON", new(Country: "GB")), ("530800", new(System: GridId.British)),
    ];

    private static readonly string[] BadCoordinates =
    [
        "", new('5', 101), "54.1", "54,1 -2,3", "lat 5 lat 6", "54N 2N", "54N 2", "-54N 2W", "54 -6, 2 18", "54.5 6 N 2 18 W", "54 60 N 2 18 W", "91 2",
    ];

    [Fact]
    public void EveryFixedReasonForAReferenceIsGiven()
    {
        var given = BadReferences.Select(bad => GridReference.TryParse(bad.Text, bad.Options, out _, out var why) ? null : why).ToHashSet();
        Assert.All([.. FixedReasons(typeof(GridReferenceFaults)), .. FixedReasons(typeof(NumericFaults)), GridReferenceFaults.TooManyFigures], reason =>
            Assert.Contains(reason, given));
    }

    [Fact]
    public void EveryFixedReasonForCoordinatesIsGiven()
    {
        var given = BadCoordinates.Select(bad => CoordinateText.TryParse(bad, out _, out var why) ? null : why).ToHashSet();
        Assert.All(FixedReasons(typeof(CoordinateFaults)), reason => Assert.Contains(reason, given));
    }

    private static IEnumerable<string> FixedReasons(Type faults) =>
        faults.GetFields(BindingFlags.Public | BindingFlags.Static).Where(field => field.IsLiteral).Select(field => (string)field.GetRawConstantValue()!);
}
