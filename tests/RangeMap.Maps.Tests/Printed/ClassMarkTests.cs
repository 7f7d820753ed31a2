namespace RangeMap.Maps.Tests.Printed;

public class ClassMarkTests
{
    private static readonly PaperPoint[] Corners = [new(0, 2), new(2, 2), new(2, 0), new(0, 0)];

    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(3)]
    [InlineData(4)]
    [InlineData(5)]
    public void PatternsOfBlackDarkenFromTheFirstClassToTheLast(int classes)
    {
        var marks = ClassMarks.Of(Legend.OfYears(PropertyNames.Year, 2001, 2000 + classes), PrintInk.Black);
        Assert.Equal(classes, marks.Distinct().Count());
        var ink = marks.Select(InkShare).ToList();
        Assert.Equal(1, ink[^1], 2);
        Assert.All(ink.Zip(ink.Skip(1)), pair => Assert.True(pair.Second > pair.First + 0.03));
    }

    [Fact]
    public void FatesAreToldApartWithoutColour()
    {
        var marks = ClassMarks.OfFates(PrintInk.Black);
        Assert.Equal(FateLegend.Classes.Count, marks.Distinct().Count());
        Assert.All(marks, mark => Assert.Equal("#000000", mark.Colour));
    }

    [Fact]
    public void MoreClassesThanCanBeToldApartAreRefused()
    {
        var legend = Legend.OfYears(PropertyNames.Year, 2001, 2006);
        Assert.Throws<ArgumentOutOfRangeException>(() => ClassMarks.Of(legend, PrintInk.Black));
        Assert.Equal(6, ClassMarks.Of(legend, PrintInk.Colour).Count);
        Assert.InRange(Legend.OfYears(PropertyNames.Year, 1850, 2026, ClassMarks.MostInBlack).Classes.Count, 2, ClassMarks.MostInBlack);
    }

    /// <summary>The part of the square that is inked, by the even-odd rule at 100 by 100 places.</summary>
    private static double InkShare(ClassMark mark)
    {
        var strands = mark.Within(Corners, 2);
        var places = from x in Enumerable.Range(0, 100) from y in Enumerable.Range(0, 100) select new PaperPoint((x + 0.5) / 50, (y + 0.5) / 50);
        return places.Count(place => strands.Count(strand => Holds(strand.Points, place)) % 2 == 1) / 10_000.0;
    }

    private static bool Holds(IReadOnlyList<PaperPoint> ring, PaperPoint p)
    {
        var inside = false;
        for (var i = 0; i < ring.Count; i++)
        {
            var (a, b) = (ring[i], ring[(i + 1) % ring.Count]);
            if (a.Y > p.Y != b.Y > p.Y && p.X < a.X + (b.X - a.X) * (p.Y - a.Y) / (b.Y - a.Y))
                inside = !inside;
        }

        return inside;
    }
}
