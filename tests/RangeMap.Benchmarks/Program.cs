using System.Globalization;
using RangeMap.Benchmarks;

// One name a stage; see docs/benchmarks.md. A second argument is the number of records, where a stage has one.
var stages = new Dictionary<string, Func<long, Task>>(StringComparer.Ordinal)
{
    ["parse-references"] = _ => Micro.RunAsync<ParseReferences>(),
    ["latlon-to-square"] = _ => Micro.RunAsync<LatLonToSquare>(),
    ["grids"] = _ => GridsAgainstProj.RunAsync(),
    ["read-rows"] = ReadRows.RunAsync,
    ["check-records"] = CheckRecords.RunAsync,
    ["read-files"] = ReadFiles.RunAsync,
    ["import"] = ImportRecords.RunAsync,
    ["import-mixed"] = ImportMixed.RunAsync,
    ["presence"] = FoldPresence.RunAsync,
    ["draw-tiles"] = DrawTiles.RunAsync,
    ["export"] = ExportRecords.RunAsync,
    ["tiles-postgis"] = TilesAgainstPostGis.RunAsync,
    ["draw-layers"] = DrawLayers.RunAsync,
    ["tile-archive"] = MakeArchive.RunAsync,
    ["printed-map"] = PrintMaps.RunAsync,
    ["spread"] = _ => SpreadReport.RunAsync(),
    ["change"] = _ => MeasureChange.RunAsync(),
    ["arrivals"] = _ => ArrivalGrowth.RunAsync(),
};

if (args.Length is 0 or > 2 || !stages.TryGetValue(args[0], out var run))
{
    Console.Error.WriteLine($"Name a stage: {string.Join(", ", stages.Keys)}. A number of records may follow; 1000000 is taken without.");
    return 2;
}

Machine.Describe();
await run(args.Length == 2 ? long.Parse(args[1], CultureInfo.InvariantCulture) : 1_000_000);
Machine.DescribeLoad();
return 0;
