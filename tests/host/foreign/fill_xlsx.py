"""Types rows into a workbook as a volunteer with another program does, by openpyxl.

fill_xlsx.py IN OUT    reads from standard input {"sheet", "rename", "insert", "swap", "rows": [{heading: content}]}:
the sheet to type into, its new name, how many columns to put before the first, two headings whose columns change places,
and what is typed below the headings. A content "date:2026-06-01" is typed as a date.
"""
import datetime
import json
import sys

import openpyxl


def content(words):
    if isinstance(words, str) and words.startswith("date:"):
        return datetime.datetime.fromisoformat(words[5:])
    return words


def headings(sheet):
    """The row of the headings and the column of each: the first row with a cell "Pool"."""
    for row in sheet.iter_rows():
        cells = {cell.value.split(" (")[0]: cell.column for cell in row if isinstance(cell.value, str)}
        if "Pool" in cells:
            return row[0].row, cells
    raise SystemExit("no headings on " + sheet.title)


def main():
    source, target = sys.argv[1:3]
    wanted = json.load(sys.stdin)
    workbook = openpyxl.load_workbook(source)
    sheet = workbook[wanted["sheet"]]
    if wanted.get("insert"):
        sheet.insert_cols(1, wanted["insert"])
    at, columns = headings(sheet)
    if wanted.get("swap"):
        one, other = (columns[name] for name in wanted["swap"])
        for row in range(at, sheet.max_row + 1):
            a, b = sheet.cell(row, one), sheet.cell(row, other)
            a.value, b.value = b.value, a.value
        at, columns = headings(sheet)
    for index, row in enumerate(wanted["rows"]):
        for heading, words in row.items():
            sheet.cell(at + 1 + index, columns[heading]).value = content(words)
    if wanted.get("rename"):
        sheet.title = wanted["rename"]
    workbook.save(target)


main()
