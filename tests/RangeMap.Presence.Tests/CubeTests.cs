using CsCheck;
using RangeMap.Grids;
using RangeMap.Records;

namespace RangeMap.Presence.Tests;

public class CubeTests
{
    private static readonly Gen<CubeCell> Cell =
        from east in Gen.Int[0, 40]
        from north in Gen.Int[0, 40]
        from first in Gen.Int[700_000, 700_040]
        from length in Gen.Int[0, 3]
        from all in Gen.Int[1, 3]
        from usable in Gen.Int[0, all]
        from confirmed in Gen.Int[0, usable]
        select new CubeCell(new Square(GridId.British, SquareSize.Km1, 400_000 + east * 1000, 300_000 + north * 1000).Code, first, first + length, new(all, usable, confirmed));

    private static readonly Gen<CubeCell[]> Cells = Cell.Array[0, 60];

    [Fact]
    public void TheOrderOfRecordsDoesNotMatter() =>
        Cells.Sample(cells => Same(TaxonCube.Gather(cells.AsEnumerable()), TaxonCube.Gather(cells.Reverse())));

    [Fact]
    public void TwoImportsMakeTheCubeOfBothFiles() =>
        Gen.Select(Cells, Cells).Sample((a, b) =>
            Same(TaxonCube.Gather(a.Concat(b)), TaxonCube.Sum([TaxonCube.Gather(a.AsEnumerable()), TaxonCube.Gather(b.AsEnumerable())])));

    [Fact]
    public void TakingAnImportBackLeavesTheCubeAsItWas() =>
        Gen.Select(Cells, Cells).Sample((a, b) =>
        {
            var before = TaxonCube.Gather(a.AsEnumerable());
            var added = TaxonCube.Gather(b.AsEnumerable());
            return Same(before, TaxonCube.Sum([TaxonCube.Sum([before, added]), added.Negate()]));
        });

    [Fact]
    public void PackingLosesNothing() =>
        Cells.Sample(cells =>
        {
            var cube = TaxonCube.Gather(cells.AsEnumerable());
            return Same(cube, CubeCodec.Unpack(CubeCodec.Pack(cube))) && Same(cube.Negate(), CubeCodec.Unpack(CubeCodec.Pack(cube.Negate())));
        });

    [Fact]
    public void BytesThatAreNoCubeAreRefusedAndNeverCrash() =>
        Gen.Byte.Array[0, 40].Sample(bytes =>
        {
            try
            {
                CubeCodec.Unpack(bytes);
            }
            catch (InvalidDataException)
            {
            }
        });

    [Theory]
    [InlineData(ReviewStatus.Confirmed, Doubts.PlacesDisagree, 1, 1, 1)]
    [InlineData(ReviewStatus.Unreviewed, Doubts.None, 1, 1, 0)]
    [InlineData(ReviewStatus.Unreviewed, Doubts.UncertaintyAssumed, 1, 1, 0)]
    [InlineData(ReviewStatus.Unreviewed, Doubts.PlacesDisagree, 1, 0, 0)]
    [InlineData(ReviewStatus.Doubtful, Doubts.None, 1, 0, 0)]
    public void QualityFollowsReviewAndSeriousDoubts(ReviewStatus status, Doubts doubts, int all, int usable, int confirmed) =>
        Assert.Equal(new(all, usable, confirmed), CubeFold.Count(status, doubts));

    private static bool Same(TaxonCube a, TaxonCube b) => a.Cells.SequenceEqual(b.Cells);
}
