"""Writes the workbooks of this folder with two independent writers, and with gnumeric's ssconvert for the third.

Needs openpyxl, xlsxwriter and ssconvert. Every value is invented; what each cell means is stated in WorkbookTests.
"""
import datetime as dt
import subprocess

import openpyxl
import xlsxwriter

HEADER = ["scientificName", "eventDate", "gridReference", "individualCount", "accuracy", "remarks"]
ROWS = [
    ["Fictus ruber", dt.date(1998, 6, 3), "TQ308801", 3, 0.1 + 0.2, True],
    ["Fictus albus", dt.datetime(2001, 12, 25, 8, 40), "TQ38", 100000, 1e-5, "=1+1"],
    ["Fictus ruber", 36526, "SP10", 0, 123456.789, "#N/A"],
    ["Fictus albus", "June 1998", "SP11", 12, 1e15, "A \"quoted\", text"],
]


def with_openpyxl(name):
    book = openpyxl.Workbook()
    notes = book.active
    notes.title = "Notes"
    notes["A1"] = "Nothing to import here"
    sheet = book.create_sheet("Records")
    sheet.append(["Records of an invented scheme"])
    sheet.append([])
    sheet.append(HEADER)
    for row in ROWS:
        sheet.append(row)
    sheet.row_dimensions[5].hidden = True
    hidden = book.create_sheet("Lists")
    hidden.sheet_state = "hidden"
    hidden.append(HEADER)
    book.save(name)


def with_xlsxwriter(name):
    book = xlsxwriter.Workbook(name, {"date_1904": True})
    day = book.add_format({"num_format": "dd/mm/yyyy"})
    moment = book.add_format({"num_format": 'yyyy-mm-dd "at" hh:mm'})
    sheet = book.add_worksheet("Records")
    sheet.write_row(0, 0, HEADER)
    for r, row in enumerate(ROWS, start=1):
        for c, value in enumerate(row):
            if isinstance(value, dt.datetime):
                sheet.write_datetime(r, c, value, moment)
            elif isinstance(value, dt.date):
                sheet.write_datetime(r, c, value, day)
            elif value == "=1+1":
                sheet.write_formula(r, c, value, None, 2)
            elif value == "#N/A":
                sheet.write_formula(r, c, "=NA()", None, "#N/A")
            elif value == 36526:
                sheet.write_number(r, c, 36526 - 1462)
            else:
                sheet.write(r, c, value)
    book.close()


with_openpyxl("openpyxl.xlsx")
with_xlsxwriter("xlsxwriter-1904.xlsx")
subprocess.run(["ssconvert", "--export-type=Gnumeric_Excel:xlsx", "openpyxl.xlsx", "gnumeric.xlsx"], check=True)
