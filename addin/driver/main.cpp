// wetspell-office: what a person would do in the office with the mouse, done without a screen.

#include "audit/blocks.hpp"
#include "base/text.hpp"
#include "driver/document.hpp"
#include "driver/failure.hpp"
#include "driver/replace_file.hpp"
#include "driver/tables.hpp"
#include "driver/window.hpp"

#include <boost/program_options.hpp>
#include <com/sun/star/frame/XModel.hpp>
#include <fmt/format.h>
#include <nlohmann/json.hpp>

#include <algorithm>
#include <cstdint>
#include <iostream>
#include <thread>

namespace {

namespace fs = std::filesystem;
namespace po = boost::program_options;
using namespace wetspell::driver;
using css::uno::Any;
using wetspell::addin::Sheets;

constexpr const char* help =
    R"(wetspell-office: an office without a screen, in a profile of its own that is removed afterwards

  wetspell-office convert IN OUT         open IN, write OUT in the format its name ends in
  wetspell-office check FILE --oxt F     check the season in FILE, print its report in the --format;
                                         with --out DIR also store the checked workbook and a PDF there;
                                         leaves 1 when something is to be fixed
  wetspell-office summarise FILE --oxt F   sum up the season in FILE, print the summary in the --format;
                                         with --out DIR also store the summarised workbook and a PDF there
  wetspell-office pool FILE CODE --oxt F --out DIR   store the page of one pool as PDF and PNG there
  wetspell-office audit FILE --oxt F     audit the sheets of FILE in whatever layout, print what was found in
                                         the --format; with --out DIR also store the workbook with the
                                         sheets of the audit there, and a PDF of those sheets
  wetspell-office gather SEASON FOLDER --oxt F   take what came back in FOLDER into SEASON, which is replaced on the
                                         disk only when the new one is written whole; print what was done as JSON;
                                         leaves 1 when something is to be chosen or could not be read
  wetspell-office tables FILE...         print the cells of every FILE, one JSON object a line; --limit and
                                         --memory hold for each FILE; --own: sheets that Wetspell wrote too
  wetspell-office store FILE... --as FORMAT --out DIR   open every FILE, write it there in each FORMAT
  wetspell-office dispatch IN OUT COMMAND...   open IN, run commands by their address, write OUT
  wetspell-office show FILE              open FILE in a window (needs a screen) for --seconds

Nothing is fetched from the net, and no links are updated; a file that is stored keeps them. Where a file is only read,
the stored results count of formulas that refer to other files or to the net.

Formats, by ending: .ods .ots .fods .xlsx .csv .pdf .png
Exit: 0 done, 1 checked and something is to be fixed, 2 not done, and the reason on standard error

)";

struct Arguments {
  std::string command;
  std::vector<std::string> words;
  OfficeOptions office;
  fs::path out;
  std::string apply;
  std::string format;
  std::vector<std::string> as;
  std::string size;
  std::string sheet;
  int seconds = 0;
  int limit = 0;
  int memory = 0;
  bool own = false;
};

po::options_description described(Arguments& to, std::vector<std::string>& extensions) {
  po::options_description all("Options");
  all.add_options()("help", "this text")("oxt", po::value(&extensions),
                                         "extension to install; may be repeated")(
      "locale", po::value(&to.office.locale)->default_value("en-US"), "language and country, as in de-DE")(
      "out", po::value(&to.out),
      "check, summarise, audit, pool: folder for the workbook and its PDF, the page")(
      "apply", po::value(&to.apply),
      "check: first make all proposed replacements of this level (fix, ask, note)")(
      "format", po::value(&to.format)->default_value("json"), "check, summarise, audit: text, csv or json")(
      "as", po::value(&to.as), "store: a format by its ending (ods, xlsx); may be repeated")(
      "size", po::value(&to.size)->default_value("1600x1000"), "show: width and height of the window")(
      "sheet", po::value(&to.sheet), "show: name of the sheet to turn to")(
      "seconds", po::value(&to.seconds)->default_value(10), "show: how long the window stays")(
      "limit", po::value(&to.limit)->default_value(1800), "seconds after which the office is ended")(
      "memory", po::value(&to.memory)->default_value(6000), "tables: MB of memory above which it is ended")(
      "own", po::bool_switch(&to.own), "tables: with the sheets that Wetspell wrote");
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

void store(const Arguments& arguments) {
  require(!arguments.words.empty(), "store wants at least one file");
  require(!arguments.as.empty(), "store wants to know as what: --as FORMAT");
  require(!arguments.out.empty(), "store wants a folder: --out DIR");
  fs::create_directories(arguments.out);
  Office office(arguments.office);
  for (const std::string& word : arguments.words) {
    const fs::path file(word);
    const Document document = Document::open(office, file);
    for (const std::string& format : arguments.as) {
      document.store(arguments.out / (file.stem().string() + "." + format));
    }
  }
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
  constexpr std::uint64_t megabyte = 1'000'000;
  OfficeOptions options = arguments.office;
  options.memoryLimit = static_cast<std::uint64_t>(std::max(arguments.memory, 0)) * megabyte;
  Office office(options);
  for (const std::string& file : arguments.words) {
    if (!office.isRunning()) {
      office.restart(); // the file before was too much for it
    }
    office.allow(options.lifeLimit);
    fmt::print("{}\n", tablesLine(office, file, arguments.own ? Sheets::all : Sheets::of_people));
  }
}

Any word(const std::string& text) {
  return Any(wetspell::addin::toOffice(text));
}

/// A season in an office with the extension, and what can be done with it.
class Desk {
public:
  explicit Desk(const Arguments& arguments)
      : arguments_(arguments), file_(fileOf(arguments)), office_(arguments.office),
        document_(Document::open(office_, file_, onlyReads(arguments) ? toRead : OpenOptions())),
        desk_(office_.service("org.wetspell.SeasonDesk")) {}

  template <class... More> Any call(const std::string& method, const More&... more) {
    const Any model(css::uno::Reference<css::frame::XModel>(document_.model(), css::uno::UNO_QUERY_THROW));
    return office_.call(desk_, method, {model, word(more)...});
  }
  template <class... More> std::string text(const std::string& method, const More&... more) {
    rtl::OUString text;
    require(call(method, more...) >>= text, "the extension returned no text");
    return wetspell::addin::fromOffice(text);
  }
  /// The workbook and its pages, in the folder for what comes out.
  void store(const std::string& ending) const { store(ending, document_.sheetNames()); }
  /// The workbook, and the pages of some of its sheets.
  void store(const std::string& ending, const std::vector<std::string>& printed) const {
    fs::create_directories(arguments_.out);
    const std::string name = file_.stem().string() + ending;
    document_.store(arguments_.out / (name + ".ods"));
    document_.storeSheets(printed, arguments_.out / (name + ".pdf"));
  }
  [[nodiscard]] const fs::path& file() const { return file_; }
  [[nodiscard]] const Document& document() const { return document_; }

private:
  /// A workbook that is stored keeps all that it links to, so it is opened as it is.
  static bool onlyReads(const Arguments& arguments) {
    return arguments.command != "gather" && arguments.out.empty() && arguments.apply.empty();
  }
  static fs::path fileOf(const Arguments& arguments) {
    require(!arguments.words.empty(), "name the workbook");
    require(!arguments.office.extensions.empty(), "the extension is wanted: --oxt FILE");
    return arguments.words[0];
  }

  const Arguments& arguments_;
  fs::path file_;
  Office office_;
  Document document_;
  css::uno::Reference<css::uno::XInterface> desk_;
};

int check(const Arguments& arguments) {
  require(arguments.words.size() == 1, "check wants one file");
  Desk desk(arguments);
  if (!arguments.apply.empty()) {
    desk.call("applyAll", arguments.apply);
  }
  if (!arguments.out.empty()) {
    desk.call("check");
    desk.store("-checked");
  }
  fmt::print("{}", desk.text("report", arguments.format, desk.file().string()));
  sal_Int32 toFix = 0;
  desk.call("open", std::string("fix")) >>= toFix;
  return toFix > 0 ? 1 : 0;
}

void summarise(const Arguments& arguments) {
  require(arguments.words.size() == 1, "summarise wants one file");
  Desk desk(arguments);
  const std::string summary = desk.text("summary", arguments.format, desk.file().string());
  if (!arguments.out.empty()) {
    desk.call("summarise");
    desk.store("-summarised");
  }
  fmt::print("{}", summary);
}

/// The sheets of an audit; those that somebody typed are long, and known to whoever has them.
std::vector<std::string> sheetsOfAudit(const Document& document) {
  std::vector<std::string> blocks{wetspell::addin::auditBlock, wetspell::addin::headingsBlock};
  for (const wetspell::TableKind kind : wetspell::addin::tidyKinds) {
    blocks.push_back(wetspell::addin::tidyBlock(kind));
  }
  const std::vector<std::string> all = document.sheetNames();
  std::vector<std::string> sheets;
  for (const std::string& block : blocks) {
    if (const auto owned = wetspell::addin::ownedBlock(document.model(), block)) {
      sheets.push_back(all.at(static_cast<std::size_t>(owned->area.Sheet)));
    }
  }
  return sheets;
}

void audit(const Arguments& arguments) {
  require(arguments.words.size() == 1, "audit wants one file");
  Desk desk(arguments);
  const std::string report = desk.text("auditReport", arguments.format, desk.file().string());
  if (!arguments.out.empty()) {
    desk.call("audit");
    desk.store("-audited", sheetsOfAudit(desk.document()));
  }
  fmt::print("{}", report);
}

/// Another office that has the workbook open would write over what is added, or lose what was typed in it.
void requireNotOpenElsewhere(const fs::path& season) {
  const fs::path lock = season.parent_path() / (".~lock." + season.filename().string() + "#");
  if (std::error_code error; fs::exists(lock, error))
    throw Failure(fmt::format("{} is open in an office; close it there first. If it is not, delete {}.",
                              season.string(), lock.string()));
}

int gather(const Arguments& arguments) {
  require(arguments.words.size() == 2, "gather wants a season and a folder: SEASON FOLDER");
  const fs::path season = arguments.words[0];
  require(season.extension() == ".ods" || season.extension() == ".fods",
          "a season is kept as .ods (or .fods); other formats lose what is in its cells");
  requireNotOpenElsewhere(fs::absolute(season));
  Desk desk(arguments);
  const auto before = fs::last_write_time(season);
  const std::string said = desk.text("gather", fs::absolute(arguments.words[1]).string());
  const auto told = nlohmann::json::parse(said);
  if (told.at("changed").get<bool>()) {
    require(fs::last_write_time(season) == before,
            "the season was changed by somebody else meanwhile; nothing was written. Gather again");
    replaceFile(desk.document(), season);
  }
  fmt::print("{}", said);
  return told.at("to_choose").get<int>() + told.at("not_read").get<int>() > 0 ? 1 : 0;
}

void pool(const Arguments& arguments) {
  require(arguments.words.size() == 2, "pool wants a file and the code of a pool");
  require(!arguments.out.empty(), "pool wants a folder for the page: --out DIR");
  Desk desk(arguments);
  const std::string sheet = desk.text("poolPage", arguments.words[1]);
  fs::create_directories(arguments.out);
  for (const char* ending : {".pdf", ".png"}) {
    const fs::path page = arguments.out / (sheet + ending);
    desk.document().storeSheet(sheet, page);
    fmt::print("{}\n", page.string());
  }
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
  const po::options_description options = described(arguments, extensions);
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
  arguments.office.lifeLimit = std::chrono::seconds(arguments.limit);

  if (arguments.command == "convert") {
    convert(arguments);
  } else if (arguments.command == "store") {
    store(arguments);
  } else if (arguments.command == "tables") {
    tables(arguments);
  } else if (arguments.command == "check") {
    return check(arguments);
  } else if (arguments.command == "summarise") {
    summarise(arguments);
  } else if (arguments.command == "audit") {
    audit(arguments);
  } else if (arguments.command == "gather") {
    return gather(arguments);
  } else if (arguments.command == "pool") {
    pool(arguments);
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
