namespace RangeMap.Server.Tests.Http;

/// <summary>A few invented records in three grids, shared by the tests of one class.</summary>
public sealed class SmallWorld : IAsyncLifetime
{
    private const string Table = """
        occurrenceID,scientificName,eventDate,gridReference,recordedBy,identificationVerificationStatus
        w1,Inventa prima,1995-06-01,NZ256634,A. Invented,confirmed
        w2,Inventa prima,2005-06-01,NZ2563,A. Invented,
        w3,Inventa prima,2012-06-01,SU1234,B. Invented,
        w4,Inventa prima,2013-06-01,J3374,B. Invented,
        w5,Inventa prima,2014-06-01,WV6548,B. Invented,
        w6,Inventa secunda,2005-06-01,NZ2563,A. Invented,
        w7,Inventa tertia,2006-06-01,NZ2563,A. Invented,
        """;

    internal RunningServer Server { get; private set; } = null!;

    /// <inheritdoc/>
    public async ValueTask InitializeAsync() => Server = await RunningServer.StartAsync(Table);

    /// <inheritdoc/>
    public async ValueTask DisposeAsync() => await Server.DisposeAsync();
}
