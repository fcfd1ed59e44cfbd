# Prints what openpyxl sees of a workbook: sheets, hidden columns, entry checks and formulas, one a line.
import sys

from openpyxl import load_workbook

book = load_workbook(sys.argv[1])
for sheet in book:
    print("sheet", sheet.title)
    for letter, column in sheet.column_dimensions.items():
        if column.hidden:
            print("hidden", sheet.title, letter)
    for check in sheet.data_validations.dataValidation:
        print("check", sheet.title, check.sqref, check.type, check.formula1, "lets in others" if not check.showErrorMessage else check.errorStyle)
    for row in sheet.iter_rows():
        for cell in row:
            if cell.data_type == "f":
                print("formula", sheet.title, cell.coordinate, cell.value)
            elif cell.value is not None:
                print("value", sheet.title, cell.coordinate, cell.value)
