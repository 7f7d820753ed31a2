using RangeMap.Records;

namespace RangeMap.Server;

/// <summary>A file that was sent over HTTP, from its arrival until it is part of the data or taken away.</summary>
public sealed class Upload
{
    private volatile ImportProgress? _progress;

    /// <summary>Its name in addresses.</summary>
    public required string Id { get; init; }

    /// <summary>The name that the sender gave the file.</summary>
    public required string FileName { get; init; }

    /// <summary>The data set that its records belong to.</summary>
    public required string Dataset { get; init; }

    /// <summary>Who sent it.</summary>
    public required string By { get; init; }

    /// <summary>When it had arrived.</summary>
    public required DateTimeOffset ReceivedAt { get; init; }

    /// <summary>Its length in bytes.</summary>
    public required long Bytes { get; init; }

    /// <summary>Where it stands.</summary>
    public ImportState State { get; internal set; }

    /// <summary>What was stated about it when it was started.</summary>
    public ImportStatements Stated { get; internal set; } = new();

    /// <summary>How far the import has come; null while it does not run.</summary>
    public ImportProgress? Progress
    {
        get => _progress;
        internal set => _progress = value;
    }

    /// <summary>What the import, or a dry run of it, did.</summary>
    public ImportAnswer? Answer { get; internal set; }

    /// <summary>Why it failed.</summary>
    public ImportProblem? Problem { get; internal set; }

    /// <summary>Stops the import.</summary>
    internal CancellationTokenSource Stop { get; set; } = new();
}
