#include "command/sources.hpp"

#include "exchange/tables_json.hpp"
#include "measure/refuse.hpp"

#include <boost/process.hpp>
#include <fmt/format.h>
#include <nlohmann/json.hpp>

#include <algorithm>
#include <array>
#include <map>
#include <sstream>

namespace wetspell::command {

namespace {

namespace fs = std::filesystem;

Result<std::vector<Table>> tables_in(const nlohmann::json& line) {
  if (line.contains("problem"))
    return bad_argument(line.at("problem").get<std::string>());
  return tables_from_json(line.at("tables").dump());
}

/// What the office said of each workbook, by its name.
std::map<std::string, Result<std::vector<Table>>> read_workbooks(const Arguments& files) {
  std::map<std::string, Result<std::vector<Table>>> read;
  if (files.empty())
    return read;
  Arguments words{"tables"};
  words.insert(words.end(), files.begin(), files.end());
  const auto said = run_office(words);
  std::istringstream lines(said ? said.value().output : std::string());
  for (std::string line; std::getline(lines, line);) {
    const auto parsed = nlohmann::json::parse(line, nullptr, false);
    if (parsed.is_object() && parsed.contains("file"))
      read.emplace(parsed["file"].get<std::string>(), tables_in(parsed));
  }
  for (const std::string& file : files)
    if (!read.contains(file))
      read.emplace(file, said ? bad_argument(fmt::format("{} could not be read in the office.", file))
                              : said.error());
  return read;
}

} // namespace

bool is_workbook(const fs::path& path) {
  constexpr std::array endings{".ods", ".xlsx", ".fods"};
  return std::find(endings.begin(), endings.end(), path.extension().string()) != endings.end();
}

Result<fs::path> office_program() {
  fs::path office = beside_program("wetspell-office");
  std::error_code error;
  if (!fs::exists(office, error))
    return not_enough("workbooks need LibreOffice and the program wetspell-office beside this one; save the "
                      "sheets as CSV to work without.");
  return office;
}

Result<OfficeSaid> run_office(const Arguments& words) {
  namespace bp = boost::process;
  const auto office = office_program();
  if (!office)
    return office.error();
  std::error_code failed;
  bp::ipstream stream;
  bp::child child(office.value().string(), bp::args(words), bp::std_out > stream, bp::std_in < bp::null,
                  failed);
  if (failed)
    return bad_argument("wetspell-office cannot be started: " + failed.message());
  OfficeSaid said;
  said.output.assign(std::istreambuf_iterator<char>(stream), {});
  child.wait(failed);
  if (failed)
    return bad_argument("wetspell-office was lost: " + failed.message());
  said.exit = child.exit_code();
  return said;
}

std::vector<Source> read_sources(std::span<const std::string> files, TextFiles wanted) {
  Arguments workbooks;
  const auto needs_office = [&](const fs::path& path) {
    return is_workbook(path) || (wanted == TextFiles::any && path.extension() == ".xls");
  };
  std::copy_if(files.begin(), files.end(), std::back_inserter(workbooks), needs_office);
  auto read = read_workbooks(workbooks);
  std::vector<Source> sources;
  for (const std::string& file : files) {
    std::error_code error;
    if (!fs::exists(file, error))
      sources.push_back({file, not_enough(fmt::format("{}: there is no such file or folder.", file))});
    else if (needs_office(file))
      sources.push_back({file, std::move(read.at(file))});
    else
      sources.push_back({file, tables_at(file, wanted)});
  }
  return sources;
}

} // namespace wetspell::command
