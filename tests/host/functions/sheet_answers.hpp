#pragma once
// What cells answer, in the words of the catalogue's examples: numbers in full, text, error values; cells of
// a rectangle joined by " | ", rows by " // ".

#include "driver/document.hpp"

#include "base/text.hpp"

#include <com/sun/star/sheet/XArrayFormulaRange.hpp>
#include <com/sun/star/sheet/XCellRangeData.hpp>
#include <fmt/format.h>

#include <string>

namespace wetspell::host {

/// The office's error number as Calc shows it.
inline std::string errorValue(int number) {
  switch (number) {
  case 503:
    return "#NUM!";
  case 519:
    return "#VALUE!";
  case 525:
    return "#NAME?";
  case 532:
    return "#DIV/0!";
  case 32767:
    return "#N/A";
  default:
    return fmt::format("Err:{}", number);
  }
}

inline std::string answers(const driver::Document& document, const std::string& address) {
  const css::uno::Reference<css::table::XCellRange> range = document.range(address);
  const auto rows =
      css::uno::Reference<css::sheet::XCellRangeData>(range, css::uno::UNO_QUERY_THROW)->getDataArray();
  std::string all;
  for (sal_Int32 row = 0; row < rows.getLength(); ++row) {
    for (sal_Int32 column = 0; column < rows[row].getLength(); ++column) {
      all += column > 0 ? " | " : row > 0 ? " // " : "";
      double number = 0;
      rtl::OUString text;
      if (const int error = range->getCellByPosition(column, row)->getError()) {
        all += errorValue(error);
      } else if (rows[row][column] >>= number) {
        all += fmt::format("{}", number);
      } else if (rows[row][column] >>= text) {
        all += addin::fromOffice(text);
      }
    }
  }
  return all;
}

/// A number where the whole text is one, a formula after "=", otherwise the text as it stands.
inline void put(const driver::Document& document, const std::string& address, const std::string& content) {
  char* end = nullptr;
  const double number = std::strtod(content.c_str(), &end);
  if (content.starts_with("=")) {
    document.setFormula(address, content);
  } else if (!content.empty() && *end == '\0') {
    document.setValue(address, number);
  } else {
    document.setText(address, content);
  }
}

inline void putArray(const driver::Document& document, const std::string& address,
                     const std::string& formula) {
  css::uno::Reference<css::sheet::XArrayFormulaRange>(document.range(address), css::uno::UNO_QUERY_THROW)
      ->setArrayFormula(addin::toOffice(formula));
}

} // namespace wetspell::host
