// Small workbooks for volunteers, who have neither the extension nor perhaps the same spreadsheet program.
#include "check/findings_table.hpp"
#include "command/command.hpp"
#include "command/files.hpp"
#include "command/options.hpp"
#include "command/sources.hpp"
#include "gather/ask_list.hpp"
#include "gather/file_names.hpp"
#include "measure/refuse.hpp"
#include "season/code_index.hpp"
#include "table/day.hpp"
#include "templates/handout.hpp"

#include <boost/filesystem.hpp>
#include <fmt/format.h>
#include <fmt/ranges.h>

#include <array>

namespace wetspell::command {

namespace {

namespace fs = std::filesystem;

constexpr std::array formats{"ods", "xlsx"};

/// A folder for what the office is to store, gone afterwards.
class Drafts {
public:
  Drafts()
      : path_(fs::temp_directory_path() / boost::filesystem::unique_path("wetspell-%%%%%%%%%%%%").string()) {
    fs::create_directories(path_);
  }
  ~Drafts() {
    std::error_code error;
    fs::remove_all(path_, error);
  }
  Drafts(const Drafts&) = delete;
  Drafts& operator=(const Drafts&) = delete;
  [[nodiscard]] fs::path operator/(const std::string& name) const { return path_ / name; }
  [[nodiscard]] const fs::path& path() const { return path_; }

private:
  fs::path path_;
};

Arguments codes_of(const Season& season) {
  Arguments codes;
  for (const Person& person : season.people)
    codes.push_back(person.code);
  return codes;
}

/// The people whose handouts are wanted; an empty code: all of them.
Result<std::vector<std::size_t>> wanted(const Season& season, const std::string& code) {
  std::vector<std::size_t> people;
  CodeIndex index;
  for (std::size_t i = 0; i < season.people.size(); ++i) {
    people.push_back(i);
    index.add_code(season.people[i].code, static_cast<std::int32_t>(i));
  }
  if (people.empty())
    return not_enough("the season names no people: list them in its table of people first.");
  if (code.empty())
    return people;
  const Ref found = index.find(code);
  if (!found.known())
    return bad_argument(fmt::format("there is no person with the code '{}'; the season has {}.", code,
                                    fmt::join(codes_of(season), ", ")));
  return std::vector{static_cast<std::size_t>(found.index)};
}

/// What somebody may have filled in meanwhile is never written over.
Result<void> require_free(const std::vector<fs::path>& files) {
  std::error_code error;
  for (const fs::path& file : files)
    if (fs::exists(file, error))
      return bad_argument(fmt::format("{} is there already and may have been filled in; nothing was written. "
                                      "Name another folder, or move it away.",
                                      file.string()));
  return boost::outcome_v2::success();
}

Result<void> draft(const Season& season, const std::vector<std::size_t>& people, const Arguments& names,
                   const Drafts& drafts) {
  const auto answers = answers_in(season);
  CheckOptions options;
  options.answers = answers;
  const auto lists = ask_lists(season, wetspell::check(season, options));
  for (const std::size_t person : people) {
    if (auto written = write_file(drafts / (names[person] + ".fods"),
                                  workbook::handout_workbook(season, person, questions_to(lists, person)));
        !written)
      return written;
  }
  return boost::outcome_v2::success();
}

Result<std::string> hand_out(Source source, const std::string& code, const fs::path& out) {
  if (!source.tables)
    return source.tables.error();
  const auto season = read_season(std::move(source.tables).value(), serial_of_today());
  if (!season)
    return Problem{season.error().kind, fmt::format("{}: {}", source.file, season.error().text)};
  const auto people = wanted(season.value(), code);
  if (!people)
    return people.error();
  Arguments names = file_names(codes_of(season.value()));
  std::vector<fs::path> files;
  for (std::string& name : names)
    name.insert(0, "handout-");
  for (const std::size_t person : people.value())
    for (const char* format : formats)
      files.push_back(out / fmt::format("{}.{}", names[person], format));
  if (auto free = require_free(files); !free)
    return free.error();

  const Drafts drafts;
  if (auto made = draft(season.value(), people.value(), names, drafts); !made)
    return made.error();
  Arguments words{"store", "--out", drafts.path().string()};
  for (const char* format : formats)
    words.insert(words.end(), {"--as", format});
  for (const std::size_t person : people.value())
    words.push_back((drafts / (names[person] + ".fods")).string());
  const auto said = run_office(words);
  if (!said)
    return said.error();
  if (said.value().exit != 0)
    return bad_argument("the office could not store the handouts; its reason stands above.");
  std::string told;
  for (const fs::path& file : files) {
    std::error_code error;
    if (!fs::copy_file(drafts / file.filename().string(), file, fs::copy_options::none, error))
      return bad_argument(fmt::format("{} cannot be written: {}.", file.string(), error.message()));
    told += file.string() + "\n";
  }
  return told;
}

} // namespace

Exit handout(const Arguments& arguments) {
  namespace po = boost::program_options;
  po::options_description options;
  options.add_options()("file", po::value<Arguments>(), "the season")(
      "person", po::value<std::string>()->default_value(""),
      "code of the person")("all", po::bool_switch(), "everybody in the table of people")(
      "out,o", po::value<std::string>()->default_value(""), "folder for the workbooks");
  const auto parsed = parse(arguments, "handout", options, "file");
  if (!parsed)
    return refuse("handout", parsed.error().text);
  if (!parsed.value())
    return Exit::nothing_to_fix;
  const auto& values = *parsed.value();
  if (values.count("file") == 0 || values["file"].as<Arguments>().size() != 1)
    return refuse("handout", "name one season: a workbook, a folder of CSV tables or a CSV file of visits.");
  const auto person = values["person"].as<std::string>();
  if (person.empty() != values["all"].as<bool>())
    return refuse("handout", "say for whom: either --person CODE or --all.");
  const fs::path out = values["out"].as<std::string>();
  if (out.empty())
    return refuse("handout", "name the folder for the workbooks: --out DIR.");
  if (auto made = make_folder(out); !made)
    return refuse("handout", made.error().text);
  auto sources = read_sources(values["file"].as<Arguments>());
  const auto told = hand_out(std::move(sources.front()), person, out);
  if (!told)
    return refuse("handout", told.error().text);
  fmt::print("{}", told.value());
  return Exit::nothing_to_fix;
}

} // namespace wetspell::command
