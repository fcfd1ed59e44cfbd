// Opening, storing, commands. What concerns cells is in document_cells.cpp.

#include "driver/document.hpp"

#include "base/text.hpp"
#include "driver/failure.hpp"
#include "driver/formats.hpp"
#include "gather/without_outside.hpp"
#include "sheet/undo_step.hpp"

#include <com/sun/star/document/MacroExecMode.hpp>
#include <com/sun/star/document/UpdateDocMode.hpp>
#include <com/sun/star/document/XUndoManagerSupplier.hpp>
#include <com/sun/star/frame/DispatchHelper.hpp>
#include <com/sun/star/frame/XDispatchProvider.hpp>
#include <com/sun/star/frame/XModel.hpp>
#include <com/sun/star/frame/XStorable.hpp>
#include <com/sun/star/sheet/XCalculatable.hpp>
#include <com/sun/star/sheet/XPrintAreas.hpp>
#include <com/sun/star/util/XCloseable.hpp>
#include <com/sun/star/util/XModifiable.hpp>
#include <fmt/format.h>

#include <algorithm>

namespace wetspell::driver {

using addin::fromOffice;
using addin::toOffice;
using css::uno::Any;
using css::uno::Reference;
using css::uno::UNO_QUERY;
using css::uno::UNO_QUERY_THROW;

namespace {

css::beans::PropertyValue property(const char* name, const Any& value) {
  return {toOffice(name), -1, value, css::beans::PropertyState_DIRECT_VALUE};
}

css::uno::Sequence<css::beans::PropertyValue> sequence(const std::vector<css::beans::PropertyValue>& all) {
  return {all.data(), static_cast<sal_Int32>(all.size())};
}

Reference<css::sheet::XSpreadsheetDocument> load(const Office& office, const rtl::OUString& url,
                                                 const OpenOptions& options,
                                                 std::vector<css::beans::PropertyValue> more) {
  namespace Macros = css::document::MacroExecMode;
  more.push_back(property("Hidden", Any(options.hidden)));
  if (options.readOnly) {
    // Said only when wanted: false is taken as a demand to write, and a file that may only be read fails.
    more.push_back(property("ReadOnly", Any(true)));
  }
  more.push_back(property("MacroExecutionMode",
                          Any(options.runMacros ? Macros::ALWAYS_EXECUTE_NO_WARN : Macros::NEVER_EXECUTE)));
  // What a file draws from other files or from the net stays what it was when the file was stored.
  more.push_back(property("UpdateDocMode", Any(css::document::UpdateDocMode::NO_UPDATE)));
  return {office.desktop()->loadComponentFromURL(url, "_blank", 0, sequence(more)), UNO_QUERY};
}

/// Where a document comes from, and what the office is told of it.
struct Source {
  rtl::OUString url;
  std::vector<css::beans::PropertyValue> how;
};

Source sourceOf(const Office& office, const std::filesystem::path& file, const OpenOptions& options) {
  // Formats with marks of their own are recognised by what is in them; comma-separated text has none.
  if (file.extension() == ".csv") {
    const Format format = formatOf(file);
    return {urlOf(file),
            {property("FilterName", Any(toOffice(format.filter))),
             property("FilterOptions", Any(toOffice(format.options)))}};
  }
  Source source{urlOf(file), {}};
  if (!options.cutOff)
    return source;
  const auto cut = addin::without_outside(office.context(), file, most_bytes_of_old);
  if (!cut)
    throw Failure(fmt::format("{}: {}", file.string(), cut.error().text));
  if (cut.value().stream.is())
    source = {"private:stream", {property("InputStream", Any(cut.value().stream))}};
  if (!cut.value().filter.isEmpty())
    source.how.push_back(property("FilterName", Any(cut.value().filter)));
  return source;
}

Reference<css::document::XUndoManager>
undoManager(const Reference<css::sheet::XSpreadsheetDocument>& document) {
  return Reference<css::document::XUndoManagerSupplier>(document, UNO_QUERY_THROW)->getUndoManager();
}

/// Runs a call into the office; what it throws becomes a Failure that begins with `what`.
template <class Call> auto inWords(const Office& office, const std::string& what, Call call) {
  try {
    return call();
  } catch (const css::uno::Exception&) {
    throw office.failed(what);
  }
}

} // namespace

Document::Document(Office& office, const Reference<css::sheet::XSpreadsheetDocument>& model)
    : office_(&office), model_(model) {}

Document::Document(Document&& other) noexcept
    : office_(other.office_), model_(std::exchange(other.model_, {})) {}

Document& Document::operator=(Document&& other) noexcept {
  std::swap(office_, other.office_);
  std::swap(model_, other.model_);
  return *this;
}

Document::~Document() {
  close();
}

Document Document::create(Office& office, const OpenOptions& options) {
  const auto model = inWords(office, "no new spreadsheet",
                             [&] { return load(office, "private:factory/scalc", options, {}); });
  if (!model.is()) {
    throw Failure("the office has no Calc: it made no new spreadsheet");
  }
  return {office, model};
}

Document Document::open(Office& office, const std::filesystem::path& file, const OpenOptions& options) {
  if (!std::filesystem::is_regular_file(file)) {
    throw Failure(fmt::format("there is no file {}", file.string()));
  }
  const auto model = inWords(office, fmt::format("{} cannot be opened", file.string()), [&] {
    const Source source = sourceOf(office, file, options);
    return load(office, source.url, options, source.how);
  });
  if (!model.is()) {
    throw Failure(fmt::format("{} is not a spreadsheet the office can open", file.string()));
  }
  return {office, model};
}

void Document::close() {
  if (!model_.is()) {
    return;
  }
  try {
    Reference<css::util::XModifiable>(model_, UNO_QUERY_THROW)->setModified(false);
    Reference<css::util::XCloseable>(model_, UNO_QUERY_THROW)->close(true);
  } catch (const css::uno::Exception&) {
    // The office has gone, or keeps the document until it ends; there is nothing left to lose.
  }
  model_.clear();
}

void Document::store(const std::filesystem::path& file) const {
  const Format format = formatOf(file);
  std::vector<css::beans::PropertyValue> how = {property("FilterName", Any(toOffice(format.filter))),
                                                property("Overwrite", Any(true))};
  if (!format.options.empty()) {
    how.push_back(property("FilterOptions", Any(toOffice(format.options))));
  }
  inWords(*office_, fmt::format("{} cannot be written", file.string()), [&] {
    Reference<css::frame::XStorable>(model_, UNO_QUERY_THROW)->storeToURL(urlOf(file), sequence(how));
  });
  if (!std::filesystem::exists(file)) {
    throw Failure(fmt::format("the office wrote no {}, and did not say why", file.string()));
  }
}

void Document::storeSheets(const std::vector<std::string>& names, const std::filesystem::path& file) const {
  // The filter takes one sheet or range to print and not several. A sheet whose print areas were taken away
  // has no pages; the step is not kept, so they come back.
  const addin::OneUndoStep step(model_, "Print some sheets");
  for (const std::string& name : sheetNames())
    if (std::find(names.begin(), names.end(), name) == names.end())
      Reference<css::sheet::XPrintAreas>(sheet(name), UNO_QUERY_THROW)->setPrintAreas({});
  store(file);
}

void Document::storeSheet(const std::string& name, const std::filesystem::path& file) const {
  if (file.extension() != ".png") {
    storeSheets({name}, file);
    return;
  }
  // A picture shows the document's first page, whatever is chosen or in view.
  const auto names = sheetNames();
  const auto place = static_cast<sal_Int16>(std::find(names.begin(), names.end(), name) - names.begin());
  const auto move = [&](sal_Int16 to) {
    inWords(*office_, fmt::format("the sheet '{}' cannot be moved", name),
            [&] { model_->getSheets()->moveByName(toOffice(name), to); });
  };
  move(0);
  store(file);
  move(static_cast<sal_Int16>(place + 1)); // before the sheet that stood behind it
}

void Document::recalculate() const {
  inWords(*office_, "recalculation",
          [&] { Reference<css::sheet::XCalculatable>(model_, UNO_QUERY_THROW)->calculateAll(); });
}

void Document::undo() const {
  inWords(*office_, "undo", [&] { undoManager(model_)->undo(); });
}

void Document::redo() const {
  inWords(*office_, "redo", [&] { undoManager(model_)->redo(); });
}

std::vector<std::string> Document::undoTitles() const {
  const auto all =
      inWords(*office_, "undo list", [&] { return undoManager(model_)->getAllUndoActionTitles(); });
  std::vector<std::string> titles;
  for (const rtl::OUString& one : all) {
    titles.push_back(fromOffice(one));
  }
  return titles;
}

void Document::dispatch(const std::string& url) const {
  inWords(*office_, fmt::format("command {}", url), [&] {
    const Reference<css::frame::XModel> model(model_, UNO_QUERY_THROW);
    const Reference<css::frame::XDispatchProvider> frame(model->getCurrentController()->getFrame(),
                                                         UNO_QUERY_THROW);
    css::frame::DispatchHelper::create(office_->context())->executeDispatch(frame, toOffice(url), "", 0, {});
  });
}

} // namespace wetspell::driver
