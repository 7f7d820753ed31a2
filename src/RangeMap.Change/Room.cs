namespace RangeMap.Change;
internal static class Room;
