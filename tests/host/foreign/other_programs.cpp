#include "foreign/other_programs.hpp"

#include "driver/failure.hpp"

#include <boost/process.hpp>
#include <fmt/format.h>
#include <xlsxwriter.h>

#include <map>

namespace wetspell::host {

namespace {

namespace fs = std::filesystem;
namespace bp = boost::process;

/// Runs a program with these words; it must end well and have written the file.
void run(const std::string& program, const std::vector<std::string>& words, const std::string& input,
         const fs::path& written) {
  bp::opstream in;
  bp::child child(program, bp::args(words), bp::std_in<in, bp::std_out> bp::null, bp::std_err > bp::null);
  in << input << std::flush;
  in.pipe().close();
  child.wait();
  if (child.exit_code() != 0 || !fs::exists(written))
    throw driver::Failure(
        fmt::format("{} left {} and wrote no {}", program, child.exit_code(), written.string()));
}

} // namespace

void byGnumeric(const fs::path& from, const fs::path& to, const std::vector<std::string>& typed) {
  static const std::map<std::string, std::string> exporters{{".xlsx", "Gnumeric_Excel:xlsx2"},
                                                            {".ods", "Gnumeric_OpenCalc:odf"},
                                                            {".xls", "Gnumeric_Excel:excel_biff8"}};
  std::vector<std::string> words{"--recalc", "-T", exporters.at(to.extension().string())};
  for (const std::string& cell : typed)
    words.push_back("--set=" + cell);
  words.push_back(from.string());
  words.push_back(to.string());
  run(WETSPELL_SSCONVERT, words, {}, to);
}

void byOpenpyxl(const fs::path& from, const fs::path& to, const nlohmann::json& wanted) {
  run(WETSPELL_PYTHON, {WETSPELL_FILL_XLSX, from.string(), to.string()}, wanted.dump(), to);
}

void byExceljs(const fs::path& from, const fs::path& to, const nlohmann::json& wanted) {
  run(WETSPELL_NODE, {WETSPELL_TESTS_DIR "/node/fill_xlsx.js", from.string(), to.string()}, wanted.dump(),
      to);
}

void byXlsxwriter(const fs::path& to, const std::string& sheet,
                  const std::vector<std::vector<std::string>>& rows) {
  lxw_workbook* const workbook = workbook_new(to.c_str());
  lxw_worksheet* const page = workbook_add_worksheet(workbook, sheet.c_str());
  for (std::size_t row = 0; row < rows.size(); ++row)
    for (std::size_t column = 0; column < rows[row].size(); ++column) {
      const std::string& words = rows[row][column];
      const auto r = static_cast<lxw_row_t>(row);
      const auto c = static_cast<lxw_col_t>(column);
      if (words.starts_with("="))
        worksheet_write_number(page, r, c, std::stod(words.substr(1)), nullptr);
      else if (!words.empty())
        worksheet_write_string(page, r, c, words.c_str(), nullptr);
    }
  if (workbook_close(workbook) != LXW_NO_ERROR)
    throw driver::Failure("libxlsxwriter wrote no " + to.string());
}

} // namespace wetspell::host
