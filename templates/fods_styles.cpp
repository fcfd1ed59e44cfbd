#include "fods_parts.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <set>

namespace wetspell::workbook {
namespace {

// Comes with every LibreOffice; where it is missing, "swiss" lets the office choose one like it.
constexpr std::string_view font = "Liberation Sans";

std::string_view format_name(NumberLook look) {
  switch (look) {
  case NumberLook::one_decimal:
    return "N-one";
  case NumberLook::two_decimals:
    return "N-two";
  case NumberLook::whole:
    return "N-whole";
  case NumberLook::date:
    return "N-date";
  case NumberLook::time:
    return "N-time";
  case NumberLook::version:
    return "N-version";
  case NumberLook::rows:
    return "N-rows";
  case NumberLook::text:
    return "N-text";
  case NumberLook::general:
    break;
  }
  return {};
}

void number_style(Xml& xml, std::string_view name, int decimals) {
  xml.open("number:number-style").attribute("style:name", name);
  xml.open_inline("number:number")
      .attribute("number:decimal-places", static_cast<std::size_t>(decimals))
      .attribute("number:min-integer-digits", std::size_t{1})
      .close();
  xml.close();
}

void number_formats(Xml& xml) {
  number_style(xml, "N-one", 1);
  number_style(xml, "N-two", 2);
  number_style(xml, "N-whole", 0);
  xml.open("number:date-style").attribute("style:name", "N-date");
  xml.open_inline("number:year").attribute("number:style", "long").close();
  xml.leaf("number:text", "-");
  xml.open_inline("number:month").attribute("number:style", "long").close();
  xml.leaf("number:text", "-");
  xml.open_inline("number:day").attribute("number:style", "long").close();
  xml.close();
  xml.open("number:time-style").attribute("style:name", "N-time");
  xml.open_inline("number:hours").attribute("number:style", "long").close();
  xml.leaf("number:text", ":");
  xml.open_inline("number:minutes").attribute("number:style", "long").close();
  xml.close();
  // The cells hold a bare number and a bare version, for formulas; a reader sees what they are of.
  xml.open("number:number-style").attribute("style:name", "N-rows");
  xml.leaf("number:text", "Rows in use: ");
  xml.open_inline("number:number")
      .attribute("number:decimal-places", std::size_t{0})
      .attribute("number:min-integer-digits", std::size_t{1})
      .close();
  xml.close();
  xml.open("number:text-style").attribute("style:name", "N-text");
  xml.open_inline("number:text-content").close();
  xml.close();
  xml.open("number:text-style").attribute("style:name", "N-version");
  xml.leaf("number:text", "Wetspell at work on this computer: ");
  xml.open_inline("number:text-content").close();
  xml.close();
}

void borders(Xml& xml, const LookSpec& look) {
  const std::string thin = fmt::format("0.5pt solid {}", colour::reed);
  switch (look.border) {
  case Border::box:
    xml.attribute("fo:border", thin);
    break;
  case Border::below:
    xml.attribute("fo:border-bottom", thin);
    break;
  case Border::left_bar:
    xml.attribute("fo:border-left", fmt::format("4pt solid {}", look.ink));
    break;
  case Border::none:
    break;
  }
}

std::string_view alignment(Across across) {
  switch (across) {
  case Across::left:
    return "start";
  case Across::middle:
    return "center";
  case Across::right:
    return "end";
  case Across::automatic:
    break;
  }
  return {};
}

void cell_style(Xml& xml, const LookSpec& look) {
  xml.open("style:style")
      .attribute("style:name", look.name)
      .attribute("style:family", "table-cell")
      .attribute("style:parent-style-name", "Default");
  if (const auto format = format_name(look.number); !format.empty())
    xml.attribute("style:data-style-name", format);

  xml.open_inline("style:table-cell-properties").attribute("style:vertical-align", "middle");
  if (!look.ground.empty())
    xml.attribute("fo:background-color", look.ground);
  borders(xml, look);
  xml.attribute("fo:padding", look.border == Border::left_bar ? "0.15cm" : "0.09cm");
  if (look.wrap)
    xml.attribute("fo:wrap-option", "wrap");
  if (look.across != Across::automatic)
    xml.attribute("style:text-align-source", "fix");
  xml.close();

  if (look.across != Across::automatic)
    xml.open_inline("style:paragraph-properties").attribute("fo:text-align", alignment(look.across)).close();

  const std::string points = fmt::format("{}pt", look.points);
  xml.open_inline("style:text-properties")
      .attribute("fo:color", look.ink)
      .attribute("fo:font-size", points)
      .attribute("style:font-size-asian", points)
      .attribute("style:font-size-complex", points);
  if (look.bold)
    xml.attribute("fo:font-weight", "bold");
  if (look.italic)
    xml.attribute("fo:font-style", "italic");
  xml.close().close();
}

void default_style(Xml& xml) {
  xml.open("style:default-style").attribute("style:family", "table-cell");
  xml.open_inline("style:text-properties")
      .attribute("style:font-name", font)
      .attribute("fo:font-size", "10pt")
      .attribute("fo:language", "en")
      .attribute("fo:country", "US")
      .close();
  xml.close();
  xml.open("style:style").attribute("style:name", "Default").attribute("style:family", "table-cell");
  xml.open_inline("style:text-properties").attribute("style:font-name", font).close();
  xml.close();
}

struct PageSpec {
  PageLook look;
  std::string_view layout, master, display;
  std::string_view pages_down; ///< fitted to one page across and so many down, "0": any; empty: not fitted
  std::string_view scale{};    ///< of pages that are not fitted
  bool upright = false;
};
constexpr PageSpec pages[] = {
    {PageLook::poster, "L-poster", "Page-poster", "Pool start page", "1"},
    {PageLook::wide_table, "L-table", "Page-table", "Pool table", "0"},
    {PageLook::very_wide, "L-wide", "Page-wide", "Pool wide table", "", "80%"},
    {PageLook::letter, "L-letter", "Page-letter", "Pool page to read", "1", "", true},
    {PageLook::two_across, "L-two", "Page-two", "Pool table on two pages", "", "72%"},
};

} // namespace

std::string centimetres(double length) {
  return fmt::format("{:.2f}cm", length);
}
std::string column_style(const SheetColumn& column) {
  return fmt::format("co-{:.0f}{}", column.width * 100, column.page_break_before ? "-break" : "");
}
std::string row_style(const SheetRow& row) {
  return row.height > 0 ? fmt::format("ro-{:.0f}", row.height * 100) : "ro-as-needed";
}

std::string table_style(const Sheet& sheet) {
  std::string name = "ta-" + sheet.name;
  std::replace(name.begin(), name.end(), ' ', '-'); // the name of a style may hold no blank
  return name;
}

void write_styles(Xml& xml) {
  xml.open("office:font-face-decls");
  xml.open("style:font-face")
      .attribute("style:name", font)
      .attribute("svg:font-family", "'Liberation Sans'")
      .attribute("style:font-family-generic", "swiss")
      .attribute("style:font-pitch", "variable")
      .close();
  xml.close();
  xml.open("office:styles");
  number_formats(xml);
  default_style(xml);
  for (const LookSpec& look : looks())
    cell_style(xml, look);
  xml.close();
}

namespace {

void page_layout(Xml& xml, const PageSpec& page) {
  xml.open("style:page-layout").attribute("style:name", page.layout);
  xml.open_inline("style:page-layout-properties")
      .attribute("fo:page-width", page.upright ? "8.5in" : "11in")
      .attribute("fo:page-height", page.upright ? "11in" : "8.5in")
      .attribute("style:print-orientation", page.upright ? "portrait" : "landscape")
      .attribute("fo:margin", "0.45in")
      .attribute("style:print-page-order", "ttb")
      .attribute("style:first-page-number", "continue")
      .attribute("style:table-centering", "none")
      .attribute("style:print", "charts drawings objects zero-values");
  if (page.pages_down.empty())
    xml.attribute("style:scale-to", page.scale);
  else
    xml.attribute("style:scale-to-X", "1").attribute("style:scale-to-Y", page.pages_down);
  xml.close();
  for (const auto* part : {"style:header-style", "style:footer-style"}) {
    xml.open(part);
    xml.open_inline("style:header-footer-properties")
        .attribute("fo:min-height", "0.25in")
        .attribute("fo:margin-left", "0in")
        .attribute("fo:margin-right", "0in")
        .attribute(part == std::string_view("style:header-style") ? "fo:margin-bottom" : "fo:margin-top",
                   "0.1in")
        .close();
    xml.close();
  }
  xml.close();
}

void master_page(Xml& xml, const PageSpec& page, const Workbook& workbook) {
  xml.open("style:master-page")
      .attribute("style:name", page.master)
      .attribute("style:display-name", page.display)
      .attribute("style:page-layout-name", page.layout);
  xml.open("style:header");
  xml.open("style:region-left").open("text:p");
  xml.open_inline("text:span").attribute("text:style-name", "T-running").text(workbook.title).close();
  xml.close().close();
  xml.open("style:region-right").open("text:p");
  xml.open_inline("text:span").attribute("text:style-name", "T-running");
  xml.leaf("text:sheet-name", "").close();
  xml.close().close();
  xml.close();
  xml.open("style:footer");
  xml.open("style:region-left").open("text:p");
  xml.open_inline("text:span").attribute("text:style-name", "T-running");
  xml.text("Nothing in this workbook is a legal wetland determination.").close();
  xml.close().close();
  xml.open("style:region-right").open("text:p");
  xml.open_inline("text:span").attribute("text:style-name", "T-running").text("Page ");
  xml.leaf("text:page-number", "1").text(" of ").leaf("text:page-count", "1").close();
  xml.close().close();
  xml.close();
  xml.close();
}

void table_styles(Xml& xml, const Workbook& workbook) {
  for (const Sheet& sheet : workbook.sheets) {
    xml.open("style:style")
        .attribute("style:name", table_style(sheet))
        .attribute("style:family", "table")
        .attribute("style:master-page-name", pages[static_cast<std::size_t>(sheet.page)].master);
    xml.open_inline("style:table-properties")
        .attribute("table:display", "true")
        .attribute("style:writing-mode", "lr-tb")
        .attribute("table:tab-color", sheet.tab_colour)
        .close();
    xml.close();
  }
}

} // namespace

void write_automatic_styles(Xml& xml, const Workbook& workbook) {
  xml.open("office:automatic-styles");
  // Ordered sets: the file must not depend on anything but its content.
  std::set<std::string> written;
  for (const Sheet& sheet : workbook.sheets) {
    for (const SheetColumn& column : sheet.columns) {
      if (!written.insert(column_style(column)).second)
        continue;
      xml.open("style:style")
          .attribute("style:name", column_style(column))
          .attribute("style:family", "table-column");
      xml.open_inline("style:table-column-properties")
          .attribute("style:column-width", centimetres(column.width))
          .attribute("fo:break-before", column.page_break_before ? "page" : "auto")
          .close();
      xml.close();
    }
    for (const SheetRow& row : sheet.rows) {
      if (!written.insert(row_style(row)).second)
        continue;
      xml.open("style:style").attribute("style:name", row_style(row)).attribute("style:family", "table-row");
      xml.open_inline("style:table-row-properties");
      if (row.height > 0)
        xml.attribute("style:row-height", centimetres(row.height))
            .attribute("style:use-optimal-row-height", "false");
      else
        xml.attribute("style:use-optimal-row-height", "true");
      xml.close().close();
    }
  }
  table_styles(xml, workbook);
  xml.open("style:style").attribute("style:name", "T-running").attribute("style:family", "text");
  xml.open_inline("style:text-properties")
      .attribute("fo:color", colour::quiet_ink)
      .attribute("fo:font-size", "8pt")
      .close();
  xml.close();
  for (const PageSpec& page : pages)
    page_layout(xml, page);
  xml.close();

  xml.open("office:master-styles");
  for (const PageSpec& page : pages)
    master_page(xml, page, workbook);
  xml.close();
}

} // namespace wetspell::workbook
