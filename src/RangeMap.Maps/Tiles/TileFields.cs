namespace RangeMap.Maps;

/// <summary>Field numbers and commands of the Mapbox Vector Tile specification 2.1 (vector_tile.proto and section 4.3).</summary>
internal static class TileFields
{
    public const int TileLayer = 3;

    public const int LayerVersion = 15;
    public const int LayerName = 1;
    public const int LayerFeature = 2;
    public const int LayerKey = 3;
    public const int LayerValue = 4;
    public const int LayerExtent = 5;

    public const int FeatureId = 1;
    public const int FeatureTags = 2;
    public const int FeatureType = 3;
    public const int FeatureGeometry = 4;

    public const int ValueString = 1;
    public const int ValueDouble = 3;
    public const int ValueUint = 5;
    public const int ValueTruth = 7;

    public const int Version = 2;
    public const int Line = 2;
    public const int Polygon = 3;

    public const int MoveTo = 1;
    public const int LineTo = 2;
    public const int ClosePath = 7;

    /// <summary>A command and how often it is repeated, as one number.</summary>
    public static uint Command(int command, int count) => (uint)((count << 3) | command);
}
