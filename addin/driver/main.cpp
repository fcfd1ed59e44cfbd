// wetspell-office: what a person would do in the office with the mouse, done without a screen.

#include "base/text.hpp"
#include "driver/document.hpp"
#include "driver/failure.hpp"
#include "driver/tables.hpp"
#include "driver/window.hpp"

#include <boost/program_options.hpp>
#include <com/sun/star/frame/XModel.hpp>
#include <fmt/format.h>

#include <iostream>
#include <thread>

namespace {

namespace fs = std::filesystem;
namespace po = boost::program_options;
using namespace wetspell::driver;
using css::uno::Any;

constexpr const char* help =
    R"(wetspell-office: an office without a screen, in a profile of its own that is removed afterwards

  wetspell-office convert IN OUT         open IN, write OUT in the format its name ends in
  wetspell-office check FILE --oxt F     check the season in FILE, print its report in the --format;
                                         with --out DIR also store the checked workbook and a PDF there;
                                         leaves 1 when something is to be fixed
  wetspell-office tables FILE...         print the cells of every FILE, one JSON object a line
  wetspell-office dispatch IN OUT COMMAND...   open IN, run commands by their address, write OUT
  wetspell-office show FILE              open FILE in a window (needs a screen) for --seconds

Formats, by ending: .ods .ots .fods .xlsx .csv .pdf
Exit: 0 done, 1 checked and something is to be fixed, 2 not done, and the reason on standard error

)";

struct Arguments {
  std::string command;
  std::vector<std::string> words;
  OfficeOptions office;
  fs::path out;
  std::string apply;
  std::string format;
  std::string size;
  std::string sheet;
  int seconds = 0;
};

po::options_description described(Arguments& to, std::vector<std::string>& extensions, int& limit) {
  po::options_description all("Options");
  all.add_options()("help", "this text")("oxt", po::value(&extensions),
                                         "extension to install; may be repeated")(
      "locale", po::value(&to.office.locale)->default_value("en-US"), "language and country, as in de-DE")(
      "out", po::value(&to.out), "check: folder for the checked workbook and its PDF")(
      "apply", po::value(&to.apply),
      "check: first make all proposed replacements of this level (fix, ask, note)")(
      "format", po::value(&to.format)->default_value("json"), "check: text, csv or json")(
      "size", po::value(&to.size)->default_value("1600x1000"), "show: width and height of the window")(
      "sheet", po::value(&to.sheet), "show: name of the sheet to turn to")(
      "seconds", po::value(&to.seconds)->default_value(10), "show: how long the window stays")(
      "limit", po::value(&limit)->default_value(1800), "seconds after which the office is ended");
  return all;
}

void require(bool holds, const char* words) {
  if (!holds) {
    throw Failure(words);
  }
}

void convert(const Arguments& arguments) {
  require(arguments.words.size() == 2, "convert wants two files: IN OUT");
  Office office(arguments.office);
  Document::open(office, arguments.words[0]).store(arguments.words[1]);
}

void dispatch(const Arguments& arguments) {
  require(arguments.words.size() >= 3,
          "dispatch wants two files and at least one command: IN OUT COMMAND...");
  Office office(arguments.office);
  const Document document = Document::open(office, arguments.words[0]);
  for (auto command = arguments.words.begin() + 2; command != arguments.words.end(); ++command) {
    document.dispatch(*command);
  }
  document.store(arguments.words[1]);
}

void tables(const Arguments& arguments) {
  require(!arguments.words.empty(), "tables wants at least one file");
  Office office(arguments.office);
  for (const std::string& file : arguments.words) {
    fmt::print("{}\n", tablesLine(office, file));
  }
}

int check(const Arguments& arguments) {
  require(arguments.words.size() == 1, "check wants one file");
  require(!arguments.office.extensions.empty(), "check wants the extension: --oxt FILE");
  const fs::path file = arguments.words[0];
  Office office(arguments.office);
  const Document document = Document::open(office, file);
  const Any model(css::uno::Reference<css::frame::XModel>(document.model(), css::uno::UNO_QUERY_THROW));
  const auto desk = office.service("org.wetspell.SeasonDesk");
  const auto word = [](const std::string& text) { return Any(wetspell::addin::toOffice(text)); };
  if (!arguments.apply.empty()) {
    office.call(desk, "applyAll", {model, word(arguments.apply)});
  }
  if (!arguments.out.empty()) {
    office.call(desk, "check", {model});
    fs::create_directories(arguments.out);
    const std::string name = file.stem().string() + "-checked";
    document.store(arguments.out / (name + ".ods"));
    document.store(arguments.out / (name + ".pdf"));
  }
  rtl::OUString report;
  require(office.call(desk, "report", {model, word(arguments.format), word(file.string())}) >>= report,
          "the check returned no text");
  fmt::print("{}", wetspell::addin::fromOffice(report));
  sal_Int32 toFix = 0;
  office.call(desk, "open", {model, word("fix")}) >>= toFix;
  return toFix > 0 ? 1 : 0;
}

void show(const Arguments& arguments) {
  require(arguments.words.size() == 1, "show wants one file");
  OfficeOptions options = arguments.office;
  options.visible = true;
  Office office(options);
  OpenOptions open;
  open.hidden = false;
  const Document document = Document::open(office, arguments.words[0], open);
  placeWindow(document, sizeOf(arguments.size));
  if (!arguments.sheet.empty()) {
    turnTo(document, arguments.sheet);
  }
  std::this_thread::sleep_for(std::chrono::seconds(arguments.seconds));
}

int run(int argc, char** argv) {
  Arguments arguments;
  std::vector<std::string> extensions;
  int limit = 0;
  const po::options_description options = described(arguments, extensions, limit);
  po::options_description everything = options;
  everything.add_options()("command", po::value(&arguments.command))("words", po::value(&arguments.words));
  po::positional_options_description places;
  places.add("command", 1).add("words", -1);
  po::variables_map given;
  po::store(po::command_line_parser(argc, argv).options(everything).positional(places).run(), given);
  po::notify(given);
  if (given.count("help") != 0 || arguments.command.empty()) {
    std::cout << help << options;
    return arguments.command.empty() && given.count("help") == 0 ? 2 : 0;
  }
  arguments.office.extensions.assign(extensions.begin(), extensions.end());
  arguments.office.lifeLimit = std::chrono::seconds(limit);

  if (arguments.command == "convert") {
    convert(arguments);
  } else if (arguments.command == "tables") {
    tables(arguments);
  } else if (arguments.command == "check") {
    return check(arguments);
  } else if (arguments.command == "dispatch") {
    dispatch(arguments);
  } else if (arguments.command == "show") {
    show(arguments);
  } else {
    throw Failure(fmt::format("there is no command '{}'; see wetspell-office --help", arguments.command));
  }
  return 0;
}

} // namespace

int main(int argc, char** argv) {
  try {
    return run(argc, argv);
  } catch (const css::uno::Exception&) {
    fmt::print(stderr, "wetspell-office: {}\n", wordsOfCurrent());
  } catch (const std::exception& error) {
    fmt::print(stderr, "wetspell-office: {}\n", error.what());
  }
  return 2;
}
