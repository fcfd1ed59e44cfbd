#include "driver/formats.hpp"

#include "driver/failure.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <utility>

namespace wetspell::driver {

Format formatOf(const std::filesystem::path& path) {
  // Comma, double quote, UTF-8, from the first line; cells as shown.
  static const std::array<std::pair<const char*, Format>, 7> formats = {{
      {".ods", {"calc8", ""}},
      {".ots", {"calc8_template", ""}},
      {".fods", {"OpenDocument Spreadsheet Flat XML", ""}},
      {".xlsx", {"Calc MS Excel 2007 XML", ""}},
      {".csv", {"Text - txt - csv (StarCalc)", "44,34,76,1,,0,false,true"}},
      {".pdf", {"calc_pdf_Export", ""}},
      {".png", {"calc_png_Export", ""}},
  }};
  std::string ending = path.extension().string();
  std::transform(ending.begin(), ending.end(), ending.begin(),
                 [](char c) { return c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c; });
  for (const auto& [known, format] : formats) {
    if (ending == known) {
      return format;
    }
  }
  throw Failure(fmt::format("{}: files that end in '{}' are not known; known are .ods, .ots, .fods, .xlsx, "
                            ".csv, .pdf and .png",
                            path.string(), ending));
}

} // namespace wetspell::driver
