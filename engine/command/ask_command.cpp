// What to ask whom: one short text for every person with open findings, ready to paste into a mail.
#include "check/findings_table.hpp"
#include "command/command.hpp"
#include "command/files.hpp"
#include "command/options.hpp"
#include "command/sources.hpp"
#include "gather/ask_list.hpp"
#include "gather/file_names.hpp"
#include "table/day.hpp"

#include <fmt/format.h>

namespace wetspell::command {

namespace {

Result<std::string> asked(Source source, const std::filesystem::path& out) {
  if (!source.tables)
    return source.tables.error();
  const auto season = read_season(std::move(source.tables).value(), serial_of_today());
  if (!season)
    return Problem{season.error().kind, fmt::format("{}: {}", source.file, season.error().text)};
  const auto answers = answers_in(season.value());
  CheckOptions options;
  options.answers = answers;
  const auto lists = ask_lists(season.value(), wetspell::check(season.value(), options));
  Arguments codes;
  for (const AskList& list : lists)
    codes.push_back(list.code);
  const auto names = file_names(codes);
  std::string all;
  for (std::size_t i = 0; i < lists.size(); ++i) {
    const AskList& list = lists[i];
    const std::string text = ask_text(season.value(), list);
    if (!out.empty())
      if (auto written = write_file(out / ("ask-" + names[i] + ".txt"), text); !written)
        return written.error();
    all += fmt::format("{}----- {}: {} to answer\n\n{}", all.empty() ? "" : "\n",
                       list.code.empty() ? "nobody is named" : list.code, list.questions.size(), text);
  }
  return all.empty() ? std::string("Nobody is to be asked anything.\n") : all;
}

} // namespace

Exit ask(const Arguments& arguments) {
  namespace po = boost::program_options;
  po::options_description options;
  options.add_options()("file", po::value<std::vector<std::string>>(), "the season")(
      "out,o", po::value<std::string>()->default_value(""), "folder for one text file a person");
  const auto parsed = parse(arguments, "ask", options, "file");
  if (!parsed)
    return refuse("ask", parsed.error().text);
  if (!parsed.value())
    return Exit::nothing_to_fix;
  const auto& values = *parsed.value();
  if (values.count("file") == 0 || values["file"].as<Arguments>().size() != 1)
    return refuse("ask", "name one season: a workbook, a folder of CSV tables or a CSV file of visits.");
  const std::filesystem::path out = values["out"].as<std::string>();
  if (auto made = make_folder(out); !made)
    return refuse("ask", made.error().text);
  auto sources = read_sources(values["file"].as<Arguments>());
  const auto text = asked(std::move(sources.front()), out);
  if (!text)
    return refuse("ask", text.error().text);
  fmt::print("{}", text.value());
  return Exit::nothing_to_fix;
}

} // namespace wetspell::command
