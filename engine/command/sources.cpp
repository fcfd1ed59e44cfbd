#include "command/sources.hpp"

#include "exchange/tables_json.hpp"
#include "gather/workbook_bytes.hpp"
#include "measure/refuse.hpp"

#include <boost/process.hpp>
#include <fmt/format.h>
#include <nlohmann/json.hpp>

#include <algorithm>
#include <array>
#include <cerrno>
#include <fstream>
#include <map>
#include <optional>
#include <sstream>

namespace wetspell::command {

namespace {

namespace fs = std::filesystem;

/// One workbook's line, as wetspell-office writes it.
Result<std::vector<Table>> tables_in(const nlohmann::json& line) {
  if (line.contains("problem"))
    return bad_argument(line.at("problem").get<std::string>());
  return tables_from(line.at("tables"));
}

std::string ending_of(const fs::path& path) {
  std::string ending = path.extension().string();
  std::transform(ending.begin(), ending.end(), ending.begin(),
                 [](char c) { return c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c; });
  return ending;
}

/// What can be said of a file before it is opened.
std::optional<Problem> problem_with(const std::string& file, bool workbook) {
  std::error_code error;
  if (!fs::exists(file, error))
    return not_enough(fmt::format("{}: there is no such file or folder.", file));
  if (fs::is_directory(file, error))
    return std::nullopt;
  if (!std::ifstream(file, std::ios::binary))
    return bad_argument(fmt::format("{} cannot be read: {}.", file, std::generic_category().message(errno)));
  if (!workbook || !may_be_workbook(file))
    return std::nullopt;
  const auto bytes = file_text(file);
  if (!bytes)
    return bytes.error();
  if (auto sound = openable(fs::path(file).extension().string(), bytes.value(), most_bytes_of_old); !sound)
    return Problem{sound.error().kind, fmt::format("{}: {}", file, sound.error().text)};
  return std::nullopt;
}

/// What the office said of each workbook, by its name.
std::map<std::string, Result<std::vector<Table>>> read_workbooks(const Arguments& files, OwnSheets own) {
  std::map<std::string, Result<std::vector<Table>>> read;
  if (files.empty())
    return read;
  Arguments words{"tables", "--limit", "600"}; // seconds a workbook
  if (own == OwnSheets::read)
    words.emplace_back("--own");
  words.insert(words.end(), files.begin(), files.end());
  const auto said = run_office(words);
  std::istringstream lines(said ? said.value().output : std::string());
  for (std::string line; std::getline(lines, line);) {
    auto parsed = nlohmann::json::parse(line, nullptr, false);
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
  return std::find(endings.begin(), endings.end(), ending_of(path)) != endings.end();
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

std::vector<Source> read_sources(std::span<const std::string> files, TextFiles wanted, OwnSheets own) {
  constexpr std::array older{".xls", ".xlsm", ".xlsb", ".ots"};
  Arguments workbooks;
  const auto needs_office = [&](const fs::path& path) {
    std::error_code error;
    const bool old = std::find(older.begin(), older.end(), ending_of(path)) != older.end();
    return (is_workbook(path) || (wanted == TextFiles::any && old)) && !fs::is_directory(path, error);
  };
  std::copy_if(files.begin(), files.end(), std::back_inserter(workbooks),
               [&](const std::string& file) { return needs_office(file) && !problem_with(file, true); });
  auto read = read_workbooks(workbooks, own);
  std::vector<Source> sources;
  for (const std::string& file : files) {
    if (auto problem = problem_with(file, needs_office(file)))
      sources.push_back({file, std::move(*problem)});
    else if (needs_office(file))
      sources.push_back({file, std::move(read.at(file))});
    else
      sources.push_back({file, tables_at(file, wanted)});
  }
  return sources;
}

} // namespace wetspell::command
