// The demo's rows as a season workbook and as a folder of CSV tables.
#pragma once

#include "demo/sheet_rows.hpp"

#include <map>
#include <string>

namespace wetspell::demo {

/// A flat OpenDocument spreadsheet: the template with the rows filled in.
std::string workbook_of(const SeasonRows& season);

/// File name to CSV text: settings.csv, pools.csv, people.csv, visits.csv, life.csv.
std::map<std::string, std::string> csv_files_of(const SeasonRows& season);

/// Table, row, field, pool, family, how, before, after: one line a spoiled cell.
std::string spoiled_csv(const SeasonRows& season);

} // namespace wetspell::demo
