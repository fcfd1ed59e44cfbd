#include "sheet/add_sheet.hpp"

#include "base/text.hpp"

#include <com/sun/star/awt/XWindow2.hpp>
#include <com/sun/star/container/XNameAccess.hpp>
#include <com/sun/star/document/UndoFailedException.hpp>
#include <com/sun/star/document/XUndoManagerSupplier.hpp>
#include <com/sun/star/frame/XController.hpp>
#include <com/sun/star/frame/XFrame.hpp>
#include <com/sun/star/frame/XModel.hpp>
#include <com/sun/star/util/XProtectable.hpp>
#include <cppuhelper/implbase1.hxx>
#include <cppuhelper/weakref.hxx>

#include <algorithm>

namespace wetspell::addin {

using css::uno::Reference;
using css::uno::UNO_QUERY;
using css::uno::UNO_QUERY_THROW;

namespace {

Reference<css::document::XUndoManager> undoOf(const SheetDocument& document) {
  return Reference<css::document::XUndoManagerSupplier>(document, UNO_QUERY_THROW)->getUndoManager();
}

/// While it lives, what is done to the document is not recorded.
class Unrecorded {
public:
  explicit Unrecorded(const SheetDocument& document) : undo_(undoOf(document)) { undo_->lock(); }
  ~Unrecorded() {
    try {
      undo_->unlock();
    } catch (const css::uno::Exception&) { // a document that was closed meanwhile records nothing
    }
  }
  Unrecorded(const Unrecorded&) = delete;
  Unrecorded& operator=(const Unrecorded&) = delete;

private:
  Reference<css::document::XUndoManager> undo_;
};

bool hasWindow(const SheetDocument& document) {
  const Reference<css::frame::XController> view =
      Reference<css::frame::XModel>(document, UNO_QUERY_THROW)->getCurrentController();
  if (!view.is() || !view->getFrame().is())
    return false;
  const Reference<css::awt::XWindow2> window(view->getFrame()->getContainerWindow(), UNO_QUERY);
  return window.is() && window->isVisible();
}

/// A new sheet as a change of our own. The office's change is undone in the window that is in front,
/// whoever's it is, and without any window the office ends (seen in 7.4).
class NewSheet : public cppu::WeakImplHelper1<css::document::XUndoAction> {
public:
  NewSheet(const SheetDocument& document, const rtl::OUString& name) : document_(document), name_(name) {}

  rtl::OUString SAL_CALL getTitle() override { return "New sheet"; }
  void SAL_CALL undo() override {
    const SheetDocument document(document_);
    const Unrecorded removal(document);
    document->getSheets()->removeByName(name_);
  }
  /// What was drawn on the sheet belongs to the sheet that is gone, and can be put on no other.
  void SAL_CALL redo() override {
    throw css::document::UndoFailedException(
        "A new sheet in a document without a window cannot be made again by redoing; run the command again.",
        {}, {});
  }

private:
  css::uno::WeakReference<css::sheet::XSpreadsheetDocument> document_; // it holds this change
  rtl::OUString name_;
};

template <class Insert>
void withoutWindow(const SheetDocument& document, const rtl::OUString& name, Insert insert) {
  {
    const Unrecorded insertion(document);
    insert();
  }
  undoOf(document)->addUndoAction(new NewSheet(document, name));
}

} // namespace

std::string addSheet(const SheetDocument& document, std::string wanted, std::optional<sal_Int16> position) {
  if (Reference<css::util::XProtectable>(document, UNO_QUERY_THROW)->isProtected())
    refuse("The workbook's sheets are protected against changes; nothing was written. Take the protection "
           "off first.");
  constexpr std::size_t longest = 31; // what other offices allow
  std::replace_if(
      wanted.begin(), wanted.end(),
      [](char c) { return std::string_view("[]*?:/\\'").find(c) != std::string::npos; }, '-');
  rtl::OUString base = toOffice(wanted);
  base = base.copy(0, std::min<sal_Int32>(base.getLength(), longest - 3));
  const Reference<css::container::XNameAccess> sheets(document->getSheets(), UNO_QUERY_THROW);
  rtl::OUString name = base;
  for (sal_Int32 i = 2; sheets->hasByName(name); ++i)
    name = base + " " + rtl::OUString::number(i);
  const auto end = static_cast<sal_Int16>(sheets->getElementNames().getLength());
  const auto insert = [&] { document->getSheets()->insertNewByName(name, position.value_or(end)); };
  if (hasWindow(document))
    insert();
  else
    withoutWindow(document, name, insert);
  return fromOffice(name);
}

} // namespace wetspell::addin
