namespace RangeMap.Store;
internal static class Room;
