#pragma once
// The season workbook inside an office: fresh or filled, with addresses by field.

#include "harness/host.hpp"
#include "templates/workbook.hpp"

#include <string>

namespace wetspell::host {

/// The workbook opened from a file without results, so that nothing can be right by having been right before.
driver::Document opened(driver::Office& office, const workbook::WorkbookContent& content = {});

/// "Visits.K5": the cell of a field in the given row of its table, from 0.
std::string at(Field field, std::size_t row);
/// The start page's cells.
std::string valueOf(Setting setting);
inline constexpr const char* extensionBanner = "Start.B3";
inline constexpr const char* seasonBanner = "Start.B4";
std::string versionHere();

/// Cells of all sheets that show an error or an unknown name, with what they show; empty when there are none.
std::string errorsIn(const driver::Document& document);

} // namespace wetspell::host
