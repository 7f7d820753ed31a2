using System.Globalization;
using RangeMap.ImportProcess;
using RangeMap.Store;

// Work on a database in a process of its own, which a test may kill:
//   open FILE               opens (and so makes or migrates) the database
//   import FILE DATASET     imports, telling each step before it begins
if (args is not ["open", _] and not ["import", _, _])
    return 2;
try
{
    Console.WriteLine("opening");
    var database = Database.Open(args[1]);
    if (args is ["import", _, var dataset])
        LargeImport.Run(database, dataset, step => Console.WriteLine(step.ToString(CultureInfo.InvariantCulture)));
    Console.WriteLine("done");
    return 0;
}
catch (StoreException problem)
{
    Console.WriteLine($"problem: {problem.Message}");
    return 1;
}
