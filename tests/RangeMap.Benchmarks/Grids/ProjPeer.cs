using System.ComponentModel;
using System.Diagnostics;
using System.Globalization;
using System.Runtime.CompilerServices;
using RangeMap.Grids;

namespace RangeMap.Benchmarks;

/// <summary>The C library PROJ, measured by a small program that is compiled when the benchmark runs.</summary>
internal static class ProjPeer
{
    /// <summary>Without a grid of shifts: WGS84 to Airy by the seven parameters of EPSG:1314, then the projection.</summary>
    private const string Helmert = """
        +proj=pipeline +step +proj=axisswap +order=2,1 +step +proj=unitconvert +xy_in=deg +xy_out=rad +step +proj=cart +ellps=WGS84
        +step +inv +proj=helmert +x=446.448 +y=-125.157 +z=542.06 +rx=0.15 +ry=0.247 +rz=0.842 +s=-20.489 +convention=position_vector
        +step +inv +proj=cart +ellps=airy +step +proj=tmerc +lat_0=49 +lon_0=-2 +k=0.9996012717 +x_0=400000 +y_0=-100000 +ellps=airy
        """;

    /// <summary>Seconds of a pass over the places, there and back; null when gcc or libproj is missing, which is printed.</summary>
    /// <param name="places">The places.</param>
    /// <param name="passes">How many passes to take the best of.</param>
    /// <param name="approximate">True for PROJ's shorter series of the projection.</param>
    public static (double Forward, double Inverse)? Measure(LatLon[] places, int passes, bool approximate)
    {
        var folder = Directory.CreateTempSubdirectory("rangemap-proj-peer");
        try
        {
            string program = Path.Combine(folder.FullName, "proj-peer"), file = Path.Combine(folder.FullName, "places");
            Run("gcc", ["-O2", "-o", program, Source(), "-lproj"]);
            using (var writer = new BinaryWriter(File.Create(file)))
            {
                foreach (var place in places)
                {
                    writer.Write(place.Latitude);
                    writer.Write(place.Longitude);
                }
            }

            var pipeline = Helmert.ReplaceLineEndings(" ").Replace("+proj=tmerc", approximate ? "+proj=tmerc +approx" : "+proj=tmerc", StringComparison.Ordinal);
            var answer = Run(program, [file, passes.ToString(CultureInfo.InvariantCulture), pipeline]).Split(' ');
            return (double.Parse(answer[0], CultureInfo.InvariantCulture), double.Parse(answer[1], CultureInfo.InvariantCulture));
        }
        catch (Exception missing) when (missing is Win32Exception or InvalidOperationException)
        {
            Console.WriteLine($"PROJ was not measured: {missing.Message.Trim()} (it needs the Debian packages gcc, libc6-dev and libproj-dev)");
            return null;
        }
        finally
        {
            folder.Delete(recursive: true);
        }
    }

    private static string Source([CallerFilePath] string here = "") => Path.Combine(Path.GetDirectoryName(here)!, "proj-peer.c");

    private static string Run(string program, IReadOnlyList<string> arguments)
    {
        using var process = Process.Start(new ProcessStartInfo(program, arguments) { RedirectStandardOutput = true, RedirectStandardError = true })!;
        var errors = process.StandardError.ReadToEndAsync();
        var output = process.StandardOutput.ReadToEnd();
        process.WaitForExit();
        return process.ExitCode == 0 ? output : throw new InvalidOperationException($"{program} ended with {process.ExitCode}: {errors.Result}");
    }
}
