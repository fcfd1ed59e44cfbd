#include "commands/choose.hpp"

#include "base/text.hpp"
#include "commands/controls.hpp"
#include "commands/talk.hpp"

#include <com/sun/star/awt/PushButtonType.hpp>
#include <com/sun/star/awt/XDialog.hpp>
#include <com/sun/star/awt/XListBox.hpp>
#include <com/sun/star/lang/XComponent.hpp>
#include <com/sun/star/ui/dialogs/ExecutableDialogResults.hpp>
#include <com/sun/star/ui/dialogs/FolderPicker.hpp>

namespace wetspell::addin {

using css::uno::Any;
using css::uno::Reference;
using css::uno::Sequence;
using css::uno::UNO_QUERY_THROW;

std::optional<std::size_t> chooseLine(const Window& window, const std::string& question,
                                      const std::vector<std::string>& lines, std::size_t first) {
  if (!isVisible(window.frame) || lines.empty())
    return std::nullopt;
  const auto model = windowModel(window.context, 180, 150);
  Sequence<rtl::OUString> words(static_cast<sal_Int32>(lines.size()));
  for (std::size_t i = 0; i < lines.size(); ++i)
    words.getArray()[i] = toOffice(lines[i]);
  addControl(model, "com.sun.star.awt.UnoControlFixedTextModel", "question", {6, 6, 168, 10},
             {{"Label", Any(toOffice(question))}});
  addControl(model, "com.sun.star.awt.UnoControlListBoxModel", "lines", {6, 18, 168, 104},
             {{"StringItemList", Any(words)}});
  const auto button = [&](const char* name, sal_Int32 x, css::awt::PushButtonType type, bool first_choice) {
    addControl(model, "com.sun.star.awt.UnoControlButtonModel", name, {x, 130, 50, 14},
               {{"PushButtonType", Any(static_cast<sal_Int16>(type))}, {"DefaultButton", Any(first_choice)}});
  };
  button("ok", 68, css::awt::PushButtonType_OK, true);
  button("cancel", 124, css::awt::PushButtonType_CANCEL, false);
  const auto dialog = windowOver(window.context, window.frame, model);
  // By the control: a choice that is set at its model is lost when the list is shown (seen in 7.4).
  const Reference<css::awt::XListBox> list(dialog->getControl("lines"), UNO_QUERY_THROW);
  list->selectItemPos(static_cast<sal_Int16>(first), true);
  const bool agreed = Reference<css::awt::XDialog>(dialog, UNO_QUERY_THROW)->execute() == 1;
  const sal_Int16 line = list->getSelectedItemPos();
  Reference<css::lang::XComponent>(dialog, UNO_QUERY_THROW)->dispose();
  return agreed && line >= 0 ? std::optional(static_cast<std::size_t>(line)) : std::nullopt;
}

std::optional<std::string> chooseFolder(const Window& window, const std::string& title) {
  if (!isVisible(window.frame))
    return std::nullopt;
  const auto picker = css::ui::dialogs::FolderPicker::create(window.context);
  picker->setTitle(toOffice(title));
  if (picker->execute() != css::ui::dialogs::ExecutableDialogResults::OK)
    return std::nullopt;
  return fromOffice(picker->getDirectory());
}

} // namespace wetspell::addin
