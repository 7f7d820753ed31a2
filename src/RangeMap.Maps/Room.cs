namespace RangeMap.Maps;
internal static class Room;
