#include "commands/talk.hpp"

#include "base/text.hpp"
#include "commands/controls.hpp"
#include "gather/open_folder.hpp"

#include <com/sun/star/awt/MessageBoxButtons.hpp>
#include <com/sun/star/awt/Toolkit.hpp>
#include <com/sun/star/awt/XActionListener.hpp>
#include <com/sun/star/awt/XButton.hpp>
#include <com/sun/star/awt/XControl.hpp>
#include <com/sun/star/awt/XMessageBoxFactory.hpp>
#include <com/sun/star/awt/XWindow2.hpp>
#include <com/sun/star/beans/XPropertySet.hpp>
#include <com/sun/star/task/XStatusIndicatorFactory.hpp>
#include <com/sun/star/ui/dialogs/ExecutableDialogResults.hpp>
#include <com/sun/star/ui/dialogs/FolderPicker.hpp>
#include <cppuhelper/implbase1.hxx>
#include <rtl/ref.hxx>

#include <chrono>

namespace wetspell::addin {

namespace {

using css::uno::Any;
using css::uno::Reference;
using css::uno::UNO_QUERY;
using css::uno::UNO_QUERY_THROW;

constexpr sal_Int32 fullBar = 1000;
// A check of an ordinary season is over before a window could be read.
constexpr std::chrono::milliseconds patience{700};

class CancelListener : public cppu::WeakImplHelper1<css::awt::XActionListener> {
public:
  void SAL_CALL actionPerformed(const css::awt::ActionEvent&) override { pressed = true; }
  void SAL_CALL disposing(const css::lang::EventObject&) override {}
  bool pressed = false;
};

} // namespace

bool isVisible(const Reference<css::frame::XFrame>& frame) {
  if (!frame.is())
    return false;
  const Reference<css::awt::XWindow2> window(frame->getContainerWindow(), UNO_QUERY);
  return window.is() && window->isVisible();
}

void tell(const Reference<css::uno::XComponentContext>& context, const Reference<css::frame::XFrame>& frame,
          const std::string& words, bool problem) {
  if (!isVisible(frame))
    return;
  const Reference<css::awt::XMessageBoxFactory> factory(css::awt::Toolkit::create(context), UNO_QUERY_THROW);
  const Reference<css::awt::XWindowPeer> parent(frame->getContainerWindow(), UNO_QUERY);
  factory
      ->createMessageBox(parent,
                         problem ? css::awt::MessageBoxType_WARNINGBOX : css::awt::MessageBoxType_INFOBOX,
                         css::awt::MessageBoxButtons::BUTTONS_OK, "Wetspell", toOffice(words))
      ->execute();
}

std::optional<std::filesystem::path> askForFolder(const Reference<css::uno::XComponentContext>& context,
                                                  const Reference<css::frame::XFrame>& frame,
                                                  const std::string& title) {
  if (!isVisible(frame))
    return std::nullopt;
  const auto picker = css::ui::dialogs::FolderPicker::create(context);
  picker->setTitle(toOffice(title));
  if (picker->execute() != css::ui::dialogs::ExecutableDialogResults::OK)
    return std::nullopt;
  return folderNamed(fromOffice(picker->getDirectory()));
}

struct ProgressWindow::Window {
  std::string doing;
  Reference<css::uno::XComponentContext> context;
  Reference<css::frame::XFrame> frame;
  Reference<css::task::XStatusIndicator> bar;
  Reference<css::awt::XUnoControlDialog> dialog;
  rtl::Reference<CancelListener> cancel = new CancelListener;
  std::chrono::steady_clock::time_point begun = std::chrono::steady_clock::now();

  void openDialog() {
    const auto model = windowModel(context, 150, 58);
    addControl(model, "com.sun.star.awt.UnoControlFixedTextModel", "words", {6, 6, 138, 12},
               {{"Label", Any(toOffice(doing + ". Nothing that was typed is changed."))}});
    addControl(model, "com.sun.star.awt.UnoControlProgressBarModel", "share", {6, 20, 138, 10},
               {{"ProgressValueMax", Any(fullBar)}});
    addControl(model, "com.sun.star.awt.UnoControlButtonModel", "cancel", {50, 38, 50, 14},
               {{"Label", Any(rtl::OUString("Cancel"))}});
    dialog = windowOver(context, frame, model);
    Reference<css::awt::XButton>(dialog->getControl("cancel"), UNO_QUERY_THROW)
        ->addActionListener(cancel.get());
    dialog->setVisible(true);
  }
};

ProgressWindow::ProgressWindow(const Reference<css::uno::XComponentContext>& context,
                               const Reference<css::frame::XFrame>& frame, const std::string& doing) {
  if (!isVisible(frame))
    return;
  window_ = std::make_unique<Window>();
  window_->context = context;
  window_->frame = frame;
  window_->doing = doing;
  window_->bar =
      Reference<css::task::XStatusIndicatorFactory>(frame, UNO_QUERY_THROW)->createStatusIndicator();
  window_->bar->start(toOffice(doing), fullBar);
}

ProgressWindow::~ProgressWindow() {
  if (window_ == nullptr)
    return;
  try {
    window_->bar->end();
    const Reference<css::lang::XComponent> dialog(window_->dialog, UNO_QUERY);
    if (dialog.is())
      dialog->dispose();
  } catch (const css::uno::Exception&) { // the window was closed under us: nothing is left to take away
  }
}

bool ProgressWindow::show(double share) {
  if (window_ == nullptr)
    return true;
  const auto done = static_cast<sal_Int32>(share * fullBar);
  window_->bar->setValue(done); // lets waiting events through, or nobody could press Cancel
  if (!window_->dialog.is() && std::chrono::steady_clock::now() - window_->begun > patience)
    window_->openDialog();
  if (window_->dialog.is()) {
    const Reference<css::beans::XPropertySet> bar(window_->dialog->getControl("share")->getModel(),
                                                  UNO_QUERY_THROW);
    bar->setPropertyValue("ProgressValue", Any(done));
  }
  return !window_->cancel->pressed;
}

} // namespace wetspell::addin
