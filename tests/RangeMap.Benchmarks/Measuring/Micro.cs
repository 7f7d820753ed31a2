using BenchmarkDotNet.Configs;
using BenchmarkDotNet.Diagnosers;
using BenchmarkDotNet.Jobs;
using BenchmarkDotNet.Running;
using BenchmarkDotNet.Toolchains.InProcess.Emit;

namespace RangeMap.Benchmarks;

/// <summary>Runs a class of short benchmarks with BenchmarkDotNet, in this process: the generated project of its usual way is not needed then.</summary>
internal static class Micro
{
    public static Task RunAsync<T>()
    {
        var job = Job.ShortRun.WithToolchain(InProcessEmitToolchain.DontLogOutput);
        BenchmarkRunner.Run<T>(DefaultConfig.Instance.AddJob(job).AddDiagnoser(MemoryDiagnoser.Default).WithOptions(ConfigOptions.JoinSummary));
        return Task.CompletedTask;
    }
}
