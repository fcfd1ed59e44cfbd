"""Writes workbooks as people with another program send them: python3 write_workbook.py FILE.xlsx"""

import datetime
import sys

import openpyxl

book = openpyxl.Workbook()
sheet = book.active
sheet.title = "Spring walks"
sheet.append(["Spring walks of Ada"])
sheet.append([])
sheet.append(["Remarks", "Max depth (cm)", "% full", "Pool", "Day", "Begin", "Observer", "Temperature 1"])
sheet.append(["frogs heard", 30.48, 0.75, "B01", datetime.date(2026, 6, 1), datetime.time(9, 5), "KLUG", "=50+2"])
sheet.append([None, "over my boots", None, "B07", datetime.datetime(2026, 6, 2), None, "KLUG", None])
sheet["C4"].number_format = "0%"
book.save(sys.argv[1])
