#include "gather/open_folder.hpp"

#include "base/text.hpp"
#include "exchange/csv.hpp"
#include "gather/comments.hpp"
#include "gather/without_outside.hpp"
#include "gather/workbook_bytes.hpp"
#include "measure/refuse.hpp"
#include "sheet/read_sheets.hpp"

#include <com/sun/star/beans/PropertyValue.hpp>
#include <com/sun/star/document/MacroExecMode.hpp>
#include <com/sun/star/document/UpdateDocMode.hpp>
#include <com/sun/star/frame/Desktop.hpp>
#include <com/sun/star/util/XCloseable.hpp>
#include <fmt/format.h>
#include <osl/file.hxx>

#include <algorithm>
#include <fstream>
#include <sstream>

namespace wetspell::addin {

namespace {

namespace fs = std::filesystem;
using css::uno::Any;
using css::uno::Reference;
using css::uno::UNO_QUERY;
using Context = Reference<css::uno::XComponentContext>;

rtl::OUString addressOfFile(const fs::path& path) {
  const std::u8string utf8 = fs::absolute(path).lexically_normal().u8string();
  rtl::OUString address;
  osl::FileBase::getFileURLFromSystemPath(toOffice(std::string(utf8.begin(), utf8.end())), address);
  return address;
}

css::beans::PropertyValue property(const char* name, const Any& value) {
  return {toOffice(name), -1, value, css::beans::PropertyState_DIRECT_VALUE};
}

/// A document nobody sees; closed when it goes.
class Hidden {
public:
  /// `cut`: what to open in place of the file.
  Hidden(const Context& context, const fs::path& path, const CutOff& cut) {
    // No handler for questions is given: what an office would ask (a password, whether to repair, whether to
    // run macros or follow links) counts as refused.
    std::vector<css::beans::PropertyValue> properties{
        property("Hidden", Any(true)),
        property("ReadOnly", Any(true)),
        property("MacroExecutionMode", Any(css::document::MacroExecMode::NEVER_EXECUTE)),
        property("UpdateDocMode", Any(css::document::UpdateDocMode::NO_UPDATE)),
    };
    rtl::OUString address = addressOfFile(path);
    if (cut.stream.is()) {
      address = "private:stream";
      properties.push_back(property("InputStream", Any(cut.stream)));
    }
    if (!cut.filter.isEmpty())
      properties.push_back(property("FilterName", Any(cut.filter)));
    component_ = css::frame::Desktop::create(context)->loadComponentFromURL(
        address, "_blank", 0, {properties.data(), static_cast<sal_Int32>(properties.size())});
  }
  ~Hidden() {
    try {
      if (const Reference<css::util::XCloseable> closeable{component_, UNO_QUERY}; closeable.is())
        closeable->close(true);
    } catch (const css::uno::Exception&) { // the office keeps it until it ends; nothing of it is lost
    }
  }
  Hidden(const Hidden&) = delete;
  Hidden& operator=(const Hidden&) = delete;
  [[nodiscard]] Reference<css::lang::XComponent> component() const { return component_; }

private:
  Reference<css::lang::XComponent> component_;
};

Result<std::vector<Table>> workbook(const Context& context, const fs::path& path,
                                    std::vector<std::string>& comments) {
  try {
    const auto cut = without_outside(context, path);
    if (!cut)
      return cut.error();
    const Hidden document(context, path, cut.value());
    if (!document.component().is())
      return bad_argument("the office cannot open it: it is damaged, or kept under a password.");
    const SheetDocument sheets(document.component(), UNO_QUERY);
    if (!sheets.is())
      return bad_argument("it is no spreadsheet but a document of another kind.");
    auto tables = tablesOf(sheets);
    comments = commentsOn(sheets);
    return tables;
  } catch (const css::uno::RuntimeException& problem) {
    return bad_argument(fromOffice(problem.Message));
  } catch (const css::uno::Exception& problem) {
    const std::string words = fromOffice(problem.Message);
    return bad_argument("the office cannot open it: it is damaged, or kept under a password" +
                        (words.empty() ? "." : " (" + words + ")."));
  }
}

Result<std::vector<Table>> text(const fs::path& path) {
  std::ifstream file(path, std::ios::binary);
  std::ostringstream bytes;
  bytes << file.rdbuf();
  auto table = table_from_any_text(std::move(bytes).str(), path.stem().string());
  if (!table)
    return table.error();
  std::vector<Table> tables;
  tables.push_back(std::move(table).value());
  return tables;
}

bool isText(const fs::path& path) {
  std::string ending = path.extension().string();
  std::transform(ending.begin(), ending.end(), ending.begin(),
                 [](char c) { return c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c; });
  return ending == ".csv" || ending == ".tsv" || ending == ".txt";
}

Result<std::vector<Table>> sheetsIn(const Context& context, const fs::path& path,
                                    std::vector<std::string>& comments) {
  if (auto may = openable(path); !may)
    return may.error();
  return isText(path) ? text(path) : workbook(context, path, comments);
}

struct Found {
  std::vector<fs::path> files;
  std::size_t folders = 0;
};

Found filesIn(const fs::path& folder) {
  std::error_code error;
  if (!fs::is_directory(folder, error))
    refuse(fs::exists(folder, error) ? folder.string() + " is a file: name the folder in which it lies."
                                     : "There is no folder " + folder.string() + ".");
  Found found;
  for (fs::directory_iterator each(folder, error), end; !error && each != end; each.increment(error)) {
    if (is_left_behind(each->path()))
      continue;
    if (std::error_code unknown; each->is_directory(unknown))
      ++found.folders;
    else
      found.files.push_back(each->path());
  }
  if (error)
    refuse("The folder " + folder.string() + " cannot be read: " + error.message() + ".");
  std::sort(found.files.begin(), found.files.end());
  return found;
}

/// A folder of that many was named by mistake, and to open them all would take hours.
void requireNotTooMany(const std::vector<fs::path>& files, const fs::path& folder) {
  const auto count = static_cast<std::size_t>(
      std::count_if(files.begin(), files.end(), [](const fs::path& file) { return may_be_workbook(file); }));
  if (count > mostFiles)
    refuse(
        fmt::format("The folder {} holds {} workbooks and tables, and {} are the most that are read at once; "
                    "nothing was read. Put what came back into a folder of its own, or into several.",
                    folder.string(), count, mostFiles));
}

} // namespace

fs::path folderNamed(const std::string& words) {
  rtl::OUString path;
  if (words.starts_with("file:") &&
      osl::FileBase::getSystemPathFromFileURL(toOffice(words), path) == osl::FileBase::E_None) {
    const std::string system = fromOffice(path);
    return fs::path(std::u8string(system.begin(), system.end()));
  }
  return fs::path(std::u8string(words.begin(), words.end()));
}

FolderRead openFolder(const Context& context, const fs::path& folder, const std::string& season,
                      const TakeFile& take, const std::function<bool(double)>& progress) {
  const auto [files, folders] = filesIn(folder);
  requireNotTooMany(files, folder);
  FolderRead read{true, folders, {}};
  for (std::size_t i = 0; i < files.size(); ++i) {
    if (progress && !progress(static_cast<double>(i) / static_cast<double>(files.size())))
      return {false, folders, {}};
    if (fromOffice(addressOfFile(files[i])) == season)
      continue;
    const std::u8string name = files[i].filename().u8string();
    const std::string named(name.begin(), name.end());
    std::vector<std::string> comments;
    take(named, sheetsIn(context, files[i], comments));
    if (!comments.empty())
      read.comments.emplace(named, std::move(comments));
  }
  return read;
}

} // namespace wetspell::addin
