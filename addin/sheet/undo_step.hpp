#pragma once
// Everything that happens to a document while one of these lives is one undo step. When an exception ends its
// life, all of it is taken back.

#include "base/css.hpp"

#include <com/sun/star/document/XUndoManager.hpp>
#include <com/sun/star/document/XUndoManagerSupplier.hpp>
#include <com/sun/star/frame/XModel.hpp>

#include <exception>

namespace wetspell::addin {

class UndoStep {
public:
  UndoStep(const css::uno::Reference<css::uno::XInterface>& document, const rtl::OUString& title)
      : model_(document, css::uno::UNO_QUERY_THROW),
        manager_(css::uno::Reference<css::document::XUndoManagerSupplier>(document, css::uno::UNO_QUERY_THROW)
                     ->getUndoManager()) {
    manager_->enterUndoContext(title);
    model_->lockControllers();
  }
  ~UndoStep() {
    try {
      model_->unlockControllers();
      manager_->leaveUndoContext();
      if (std::uncaught_exceptions() > before_) {
        manager_->undo();
        manager_->clearRedo();
      }
    } catch (const css::uno::Exception&) { // a document that was closed meanwhile has no steps left to end
    }
  }
  UndoStep(const UndoStep&) = delete;
  UndoStep& operator=(const UndoStep&) = delete;

private:
  int before_ = std::uncaught_exceptions();
  css::uno::Reference<css::frame::XModel> model_;
  css::uno::Reference<css::document::XUndoManager> manager_;
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
