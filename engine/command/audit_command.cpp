// What can be used of old sheets, and why not the rest.
#include "audit/audit.hpp"
#include "command/command.hpp"
#include "command/files.hpp"
#include "command/options.hpp"
#include "command/sources.hpp"
#include "exchange/audit_report.hpp"
#include "exchange/csv.hpp"
#include "table/day.hpp"

#include <fmt/format.h>

#include <algorithm>

namespace wetspell::command {

namespace {

namespace fs = std::filesystem;
namespace po = boost::program_options;

Result<GivenMap> given_map(const std::string& file) {
  if (file.empty())
    return GivenMap{};
  auto sources = read_sources(std::span(&file, 1), TextFiles::any, OwnSheets::read);
  if (!sources.front().tables)
    return sources.front().tables.error();
  Problem problem{ProblemKind::not_enough, fmt::format("{} holds no table.", file)};
  for (const Table& table : sources.front().tables.value()) {
    auto map = read_given_map(table);
    // A table with the two headings is the one that is meant, even where it cannot be understood.
    if (map || map.error().kind == ProblemKind::bad_argument)
      return map;
    problem = map.error();
  }
  return problem;
}

/// What an audit of one file leaves in a folder.
Result<void> store(const Audit& audit, const fs::path& out) {
  const std::string stem = fs::path(audit.file).stem().string();
  const auto write = [&](const std::string& what, const std::string& text) {
    return write_file(out / fmt::format("{}-{}", stem, what), text);
  };
  const std::span<const Audit> one(&audit, 1);
  // One text after another: of a full sheet each is large.
  if (auto written = write("audit.txt", audit_text(audit)); !written)
    return written;
  if (auto written = write("audit.csv", audit_csv(one)); !written)
    return written;
  if (auto written = write("audit.json", audit_json(one)); !written)
    return written;
  if (auto written = write("headings.csv", csv_from_table(headings_table(one, Place{"Headings", 1, 0})));
      !written)
    return written;
  for (const TidySheet& sheet : tidy_tables(audit))
    if (auto written = write(fmt::format("tidy-{}.csv", spec(sheet.kind).name), csv_from_table(sheet.table));
        !written)
      return written;
  return boost::outcome_v2::success();
}

std::string rendered(std::span<const Audit> audits, std::string_view format) {
  if (format == "json")
    return audit_json(audits);
  if (format == "csv")
    return audit_csv(audits);
  std::string text;
  for (const Audit& each : audits)
    text += (text.empty() ? "" : "\n") + audit_text(each);
  return text;
}

bool all_usable(const Audit& audit) {
  return audit.rows.all() > 0 && audit.rows.usable == audit.rows.all();
}

} // namespace

Exit audit(const Arguments& arguments) {
  po::options_description options;
  options.add_options()("file", po::value<std::vector<std::string>>(),
                        "what to audit")("out,o", po::value<std::string>()->default_value(""),
                                         "folder for the audit, the headings and the tidy rows")(
      "map,m", po::value<std::string>()->default_value(""), "a table of headings as a person corrected it")(
      "format,f", po::value<std::string>()->default_value("text"), "text, csv or json");
  const auto parsed = parse(arguments, "audit", options, "file");
  if (!parsed)
    return refuse("audit", parsed.error().text);
  if (!parsed.value())
    return Exit::nothing_to_fix;
  const auto& values = *parsed.value();
  if (values.count("file") == 0)
    return refuse("audit", "name a workbook, a folder of tables or a text file with a table.");
  const auto& format = values["format"].as<std::string>();
  if (format != "text" && format != "csv" && format != "json")
    return refuse("audit", fmt::format("the format is text, csv or json, not '{}'.", format));
  const fs::path out = values["out"].as<std::string>();
  if (auto made = make_folder(out); !made)
    return refuse("audit", made.error().text);
  const auto given = given_map(values["map"].as<std::string>());
  if (!given)
    return refuse("audit", given.error().text);

  Exit worst = Exit::nothing_to_fix;
  std::vector<Audit> audits;
  for (Source& source : read_sources(values["file"].as<std::vector<std::string>>(), TextFiles::any)) {
    if (!source.tables) {
      worst = refuse("audit", source.tables.error().text);
      continue;
    }
    audits.push_back(
        wetspell::audit(source.file, std::move(source.tables).value(), {&given.value(), serial_of_today()}));
    if (!all_usable(audits.back()))
      worst = std::max(worst, Exit::something_to_fix);
    if (!out.empty())
      if (auto stored = store(audits.back(), out); !stored)
        worst = refuse("audit", stored.error().text);
  }
  if (!audits.empty())
    fmt::print("{}", rendered(audits, format));
  return worst;
}

} // namespace wetspell::command
