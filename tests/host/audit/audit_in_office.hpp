#pragma once
// Old sheets in real workbooks, and what an audit says of them.

#include "harness/host.hpp"
#include "table/table.hpp"

#include <nlohmann/json.hpp>

#include <filesystem>
#include <string>
#include <vector>

namespace wetspell::host {

/// A workbook with these sheets, in their places.
driver::Document workbook_of(const std::vector<Table>& sheets, driver::Office& in = office(),
                             const driver::OpenOptions& options = {});

/// Writes it in the format the name ends in; .xls too, which our own programs never write.
void store(const driver::Document& document, const std::filesystem::path& file);

/// An old sheet with three visits, one cell that cannot be read, a sum and a column that nobody can name.
std::vector<Table> small_old_sheet();

/// What two audits must agree on: what every heading was taken for, how many rows can be used, what was found
/// where, what was left unread.
nlohmann::json gist(const nlohmann::json& audit);

/// `wetspell audit FILE --format json` with more words, as JSON.
nlohmann::json audited(const std::filesystem::path& file, const std::vector<std::string>& more = {});

/// The row (from 1) of the first cell of a column that shows these words; fails the test without one.
std::size_t row_with(const driver::Document& document, const std::string& sheet, const std::string& column,
                     const std::string& words);

} // namespace wetspell::host
