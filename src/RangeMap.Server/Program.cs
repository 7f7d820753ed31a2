Console.WriteLine("RangeMap");
