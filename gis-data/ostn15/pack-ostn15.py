"""Packs the two OSTN15 shift files into ostn15.bin. Usage: pack-ostn15.py EAST_FILE NORTH_FILE OUT_FILE

Each input holds 701 x 1251 unsigned 16-bit integers, little-endian, row by row from the south-west corner: millimetres
of shift above the base in the file's name (+82140 east, -84180 north). Neighbouring nodes hardly differ, so each value
is replaced by its mixed second difference, v[i,j] - v[i-1,j] - v[i,j-1] + v[i-1,j-1] modulo 65536 (nodes outside count
as 0), made small and positive by the zig-zag rule (0, -1, 1, -2 ... become 0, 1, 2, 3 ...), split into a plane of low
bytes and a plane of high bytes, and all four planes (east low, east high, north low, north high) are compressed as
one zlib stream (RFC 1950). The reader of RangeMap.Grids undoes exactly these steps.
"""
import hashlib
import struct
import sys
import zlib

COLUMNS, ROWS = 701, 1251
EXPECTED = {
    "east": "2f19f318b3c72569983a43e9e19a83011d39edad68f506d7ac268370ef448b96",
    "north": "dc1d2c94a15cca4493013072a8c8fbc2b6a054e11337671b9f972782a7450e7f",
}


def read(path, which):
    data = open(path, "rb").read()
    found = hashlib.sha256(data).hexdigest()
    if found != EXPECTED[which]:
        sys.exit(f"{path}: sha256 {found} is not that of the {which} shifts")
    return struct.unpack(f"<{COLUMNS * ROWS}H", data)


def planes(values):
    low, high = bytearray(len(values)), bytearray(len(values))
    for k, value in enumerate(values):
        west = values[k - 1] if k % COLUMNS else 0
        south = values[k - COLUMNS] if k >= COLUMNS else 0
        south_west = values[k - COLUMNS - 1] if k % COLUMNS and k >= COLUMNS else 0
        difference = (value - west - south + south_west) & 0xFFFF
        if difference >= 0x8000:
            difference -= 0x10000
        zigzag = (difference << 1) ^ (difference >> 15)
        low[k], high[k] = zigzag & 0xFF, (zigzag >> 8) & 0xFF
    return bytes(low) + bytes(high)


def main():
    east, north, out = sys.argv[1:4]
    packed = zlib.compress(planes(read(east, "east")) + planes(read(north, "north")), 9)
    open(out, "wb").write(packed)
    print(f"{out}: {len(packed)} bytes, sha256 {hashlib.sha256(packed).hexdigest()}")


main()
