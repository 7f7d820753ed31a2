"""Turns the foot-and-mouth data of the R package sparr into files that can be imported.

    convert.py fmd.rda FOLDER

The package describes the data so: places and times of farms of Cumbria infected in the outbreak of 2001 (410 cases, with
the integer day of infection counted from the beginning of the study period) and of farms that were not (1866 controls);
"jittered and randomly thinned by an unspecified amount to preserve anonymity". It names no unit of the coordinates: their
range (324 to 405, 482 to 561) is that of Cumbria on the British National Grid in kilometres.

Choices made here, none of them in the source:
- Places become 1 km squares. The jitter is not stated, so nothing finer is claimed.
- Day 0 is 2001-02-01. The source says only "between February and August in 2001"; an error shifts all dates alike.
- A control is an absence on the last day of any case: until then the farm stayed uninfected.
"""

import csv
import datetime
import math
import pathlib
import sys

import rdata

DAY_ZERO = datetime.date(2001, 2, 1)
TAXON_ID = "fmd"
NAME = "Foot-and-mouth disease, infected premises"
LETTERS = "ABCDEFGHJKLMNOPQRSTUVWXYZ"


def kilometre_square(x, y):
    """The 1 km grid reference, by the two-letter scheme of the British National Grid; x and y in km."""
    east, north = math.floor(x), math.floor(y)
    column, row = east // 100, 19 - north // 100
    first = LETTERS[row - row % 5 + (column + 10) // 5]
    second = LETTERS[row * 5 % 25 + column % 5]
    return f"{first}{second}{east % 100:02}{north % 100:02}"


def points(data):
    """Kind, x, y and day of every farm; the day of a control is that of the last case."""
    cases, controls = data["cases"], data["controls"]
    last = max(cases["marks"])
    yield from (("case", *farm) for farm in zip(cases["x"], cases["y"], cases["marks"]))
    yield from (("control", *farm, last) for farm in zip(controls["x"], controls["y"]))


def record(number, kind, x, y, day):
    date = DAY_ZERO + datetime.timedelta(days=day)
    status = "present" if kind == "case" else "absent"
    return f"{kind}-{number}", TAXON_ID, NAME, date.isoformat(), kilometre_square(x, y), status


def write(path, header, rows):
    with open(path, "w", newline="", encoding="utf-8") as file:
        writer = csv.writer(file)
        writer.writerow(header)
        writer.writerows(rows)


def main(source, folder):
    folder = pathlib.Path(folder)
    folder.mkdir(parents=True, exist_ok=True)
    farms = list(points(rdata.read(source)["fmd"]))
    write(folder / "points.csv", ["kind", "x_km", "y_km", "day"], farms)
    write(folder / "taxa.csv", ["taxonID", "scientificName", "group"], [[TAXON_ID, NAME, "diseases of livestock"]])
    write(
        folder / "records.csv",
        ["occurrenceID", "taxonID", "scientificName", "eventDate", "gridReference", "occurrenceStatus"],
        (record(number, *farm) for number, farm in enumerate(farms, start=1)),
    )


if __name__ == "__main__":
    main(*sys.argv[1:])
