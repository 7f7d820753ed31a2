using System.Globalization;
using RangeMap.ImportProcess;
using RangeMap.Store;

// Work on a database in a process of its own, which a test may kill:
//   open FILE               opens (and so makes or migrates) the database
//   import FILE DATASET     imports, telling each step before it begins
//   import-small FILE DATASET   the same with little to write
if (args is not ["open", _] and not ["import" or "import-small", _, _])
    return 2;
try
{
    Console.WriteLine("opening");
    var database = Database.Open(args[1]);
    if (args is ["import", _, var large])
        LargeImport.Run(database, large, Tell);
    if (args is ["import-small", _, var small])
        LargeImport.Run(database, small, Tell, bytesPerStep: 4096);
    Console.WriteLine("done");
    return 0;
}
catch (StoreException problem)
{
    Console.WriteLine($"problem: {problem.Message}");
    return 1;
}

static void Tell(int step) => Console.WriteLine(step.ToString(CultureInfo.InvariantCulture));
