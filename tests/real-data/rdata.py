"""Reads the plain data in an R workspace file (.rda): vectors, lists and their attributes.

The layout is the XDR form of serialization that the manual "R Internals", section 1.8 "Serialization Formats",
describes. Code, environments and everything else that is no plain data is refused.
"""

import bz2
import gzip
import lzma
import struct

PAIRLIST, SYMBOL, LANGUAGE, CHARACTERS, LOGICAL, INTEGER, REAL, STRING, LIST = 2, 1, 6, 9, 10, 13, 14, 16, 19
NULL, GLOBAL_ENVIRONMENT, REFERENCE = 254, 253, 255
HAS_ATTRIBUTES, HAS_TAG = 0x200, 0x400
MISSING_INTEGER = -(2**31)


class Vector(list):
    """An R vector or list: its values, and its attributes by name."""

    def __init__(self, values, attributes):
        super().__init__(values)
        self.attributes = attributes

    def __getitem__(self, key):
        """By position, or, where the vector has names, by name."""
        if isinstance(key, str):
            key = list(self.attributes["names"]).index(key)
        return super().__getitem__(key)


def read(path):
    """The objects of a workspace file, by name."""
    with open(path, "rb") as file:
        packed = file.read()
    opened = {b"\x1f\x8b": gzip.decompress, b"BZ": bz2.decompress, b"\xfd7": lzma.decompress}
    data = opened.get(packed[:2], bytes)(packed)
    if data[:7] != b"RDX2\nX\n":
        raise ValueError(f"{path} is no R workspace file in XDR form, version 2")
    return dict(Reader(data, 7).workspace())


class Reader:
    """Walks through serialized items."""

    def __init__(self, data, at):
        self.data, self.at = data, at
        self.symbols = []

    def workspace(self):
        self.take(">3i")  # form, version of the writer, oldest version that can read
        return self.item().items()

    def take(self, form):
        values = struct.unpack_from(form, self.data, self.at)
        self.at += struct.calcsize(form)
        return values

    def integer(self):
        return self.take(">i")[0]

    def item(self):
        flags = self.integer()
        kind = flags & 0xFF
        if kind in (NULL, GLOBAL_ENVIRONMENT):
            return None
        if kind == REFERENCE:
            return self.symbols[(flags >> 8) - 1]
        if kind == SYMBOL:
            self.symbols.append(self.item())
            return self.symbols[-1]
        if kind in (PAIRLIST, LANGUAGE):
            return self.pairs(flags)
        if kind == CHARACTERS:
            return self.characters()
        values = self.values(kind)
        attributes = self.item() if flags & HAS_ATTRIBUTES else None
        return Vector(values, attributes or {})

    def pairs(self, flags):
        """A chain of tagged values; for a call, which only documents how the data were made, likewise."""
        found = {}
        while flags & 0xFF in (PAIRLIST, LANGUAGE):
            if flags & HAS_ATTRIBUTES:
                self.item()
            tag = self.item() if flags & HAS_TAG else len(found)
            found[tag] = self.item()
            flags = self.integer()
        if flags & 0xFF != NULL:
            raise ValueError(f"a list ends with an item of kind {flags & 0xFF}")
        return found

    def characters(self):
        length = self.integer()
        if length < 0:
            return None
        self.at += length
        return self.data[self.at - length : self.at].decode("utf-8", "replace")

    def values(self, kind):
        length = self.integer()
        if kind in (LOGICAL, INTEGER):
            return [None if v == MISSING_INTEGER else v for v in self.take(f">{length}i")]
        if kind == REAL:
            return self.take(f">{length}d")
        if kind in (STRING, LIST):
            return [self.item() for _ in range(length)]
        raise ValueError(f"an item of kind {kind} is no plain data")
