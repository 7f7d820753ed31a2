Console.WriteLine("RangeMap benchmarks");
