using System.Globalization;

namespace RangeMap.Records.Tests;

/// <summary>
/// Changed files of every kind do nothing but become records, refusals or one stated problem, in bounded memory. A share of them runs with
/// the other tests; RANGEMAP_FUZZ_FILES=100000 runs that many, and RANGEMAP_FUZZ_SEED=n only the one that failed.
/// </summary>
public sealed class FileFuzzTests
{
    private const int Share = 20_000;
    private const long MostBytes = 50_000_000;

    [Fact]
    public void ChangedFilesNeverEscapeTheReader()
    {
        var one = Setting("RANGEMAP_FUZZ_SEED");
        var count = one is null ? Setting("RANGEMAP_FUZZ_FILES") ?? Share : 1;
        var outcomes = new int[2];
        for (var seed = one ?? 0; seed < (one ?? 0) + count; seed++)
            outcomes[Read(seed) ? 0 : 1]++;
        TestContext.Current.SendDiagnosticMessage($"{count} files: {outcomes[0]} read, {outcomes[1]} refused as a whole.");
        Assert.True(one is not null || (outcomes[0] > count / 10 && outcomes[1] > count / 10), $"The changes are too mild or too wild: {outcomes[0]} read, {outcomes[1]} refused.");
    }

    private static int? Setting(string name) => int.TryParse(Environment.GetEnvironmentVariable(name), NumberStyles.None, CultureInfo.InvariantCulture, out var number) ? number : null;

    /// <summary>True when the file was read, false when it was refused as a whole.</summary>
    private static bool Read(int seed)
    {
        var (kind, bytes) = FuzzChange.Make(seed);
        var before = GC.GetAllocatedBytesForCurrentThread();
        try
        {
            Reading.Of(new MemoryStream(bytes), Reading.Options with { NewTaxa = seed % 2 == 0, DateOrder = seed % 3 == 0 ? DateOrder.DayFirst : DateOrder.NotStated });
            return true;
        }
        catch (ImportProblemException stopped)
        {
            Assert.All([stopped.Problem.What, stopped.Problem.Where, stopped.Problem.Mend], t => Assert.False(t.Length == 0, $"RANGEMAP_FUZZ_SEED={seed} ({kind}): {stopped.Problem}"));
            return false;
        }
        catch (Exception e)
        {
            throw new InvalidOperationException($"RANGEMAP_FUZZ_SEED={seed} ({kind}): {e.GetType().Name} {e.Message}", e);
        }
        finally
        {
            var used = GC.GetAllocatedBytesForCurrentThread() - before;
            Assert.True(used < MostBytes, $"RANGEMAP_FUZZ_SEED={seed} ({kind}) took {used:N0} bytes.");
        }
    }
}
