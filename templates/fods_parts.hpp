// The parts of a flat OpenDocument file, one function each.
#pragma once

#include "model.hpp"
#include "xml.hpp"

#include <string>

namespace wetspell::workbook {

/// Cell styles, number formats, page layouts: what a person can see and change under Styles.
void write_styles(Xml& xml);
/// Column widths and row heights: styles without a name for people.
void write_automatic_styles(Xml& xml, const Workbook& workbook);
void write_body(Xml& xml, const Workbook& workbook);
/// Frozen rows and columns, zoom, which sheet is shown first.
void write_settings(Xml& xml, const Workbook& workbook);

/// "3.2cm": two digits at the most, a point whatever the locale.
std::string centimetres(double length);
std::string column_style(const SheetColumn& column);
std::string row_style(const SheetRow& row);
std::string table_style(const Sheet& sheet);

} // namespace wetspell::workbook
