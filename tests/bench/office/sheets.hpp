// Tables of cells onto sheets, as fast as the office takes them.
#pragma once

#include "driver/document.hpp"
#include "table/table.hpp"

#include <vector>

namespace wetspell::bench {

/// A new document with a sheet for each table.
driver::Document document_of(driver::Office& office, const std::vector<Table>& tables);

/// Writes the whole table at its place, in blocks of rows; columns of dates and times get their format.
void fill(const driver::Document& document, const Table& table);

/// A column of formulas from the given cell downwards: the one that is given, adapted to each row.
void fill_down(const driver::Document& document, const std::string& range, const std::string& formula);

} // namespace wetspell::bench
