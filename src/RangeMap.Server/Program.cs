using System.Text;
using RangeMap.Server;

Console.OutputEncoding = new UTF8Encoding(encoderShouldEmitUTF8Identifier: false);
var context = new CommandContext(Console.Out, Console.Error, Console.In, TimeProvider.System);
return await CommandLine.RunAsync(args, context);
