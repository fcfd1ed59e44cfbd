#pragma once
// Everything that happens to a document while one of these lives is one undo step, which is taken back when
// it was not kept: when an exception ends its life.

#include "base/css.hpp"

#include <com/sun/star/document/XUndoManager.hpp>
#include <com/sun/star/document/XUndoManagerSupplier.hpp>
#include <com/sun/star/frame/XModel.hpp>

namespace wetspell::addin {

/// To be kept, outright, at its end. Whether an exception is on its way cannot be asked of the language here:
/// the extension brings its own runtime, and exceptions that cell functions throw into the office while the
/// step changes cells count there as never caught.
class OneUndoStep {
public:
  OneUndoStep(const css::uno::Reference<css::uno::XInterface>& document, const rtl::OUString& title)
      : model_(document, css::uno::UNO_QUERY_THROW),
        manager_(css::uno::Reference<css::document::XUndoManagerSupplier>(document, css::uno::UNO_QUERY_THROW)
                     ->getUndoManager()),
        before_(manager_->getAllUndoActionTitles()) {
    manager_->enterUndoContext(title);
    model_->lockControllers();
  }
  ~OneUndoStep() {
    try {
      model_->unlockControllers();
      manager_->leaveUndoContext();
      // A step in which nothing happened leaves no trace; what was done before it is not to be taken back.
      if (!kept_ && manager_->getAllUndoActionTitles() != before_) {
        manager_->undo();
        manager_->clearRedo();
      }
    } catch (const css::uno::Exception&) { // a document that was closed meanwhile has no steps left to end
    }
  }
  OneUndoStep(const OneUndoStep&) = delete;
  OneUndoStep& operator=(const OneUndoStep&) = delete;

  /// All of it was done.
  void keep() { kept_ = true; }

private:
  bool kept_ = false;
  css::uno::Reference<css::frame::XModel> model_;
  css::uno::Reference<css::document::XUndoManager> manager_;
  css::uno::Sequence<rtl::OUString> before_;
};

/// Part of a step. The office keeps at most a hundred changes in one list and silently forgets the first ones
/// (seen in 7.4): a step of more is made of parts, each a list of its own.
class UndoPart {
public:
  explicit UndoPart(const css::uno::Reference<css::uno::XInterface>& document)
      : manager_(css::uno::Reference<css::document::XUndoManagerSupplier>(document, css::uno::UNO_QUERY_THROW)
                     ->getUndoManager()) {
    manager_->enterUndoContext("part");
  }
  ~UndoPart() {
    try {
      manager_->leaveUndoContext();
    } catch (const css::uno::Exception&) { // a document that was closed meanwhile has no steps left to end
    }
  }
  UndoPart(const UndoPart&) = delete;
  UndoPart& operator=(const UndoPart&) = delete;

private:
  css::uno::Reference<css::document::XUndoManager> manager_;
};

} // namespace wetspell::addin
