namespace RangeMap.Server;

/// <summary>What a command tells the shell.</summary>
internal static class ExitCode
{
    public const int Done = 0;
    public const int Failed = 1;
    public const int BadArguments = 2;
    public const int DoneWithRefusals = 3;
}
