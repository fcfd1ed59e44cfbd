#pragma once
// Talking with the person at the window: a message, and the progress of long work with a way to end it.
// Without a visible window (tests, the command line) nothing is shown and nobody is waited for.

#include "base/css.hpp"

#include <com/sun/star/frame/XFrame.hpp>
#include <com/sun/star/task/XStatusIndicator.hpp>
#include <com/sun/star/uno/XComponentContext.hpp>

#include <filesystem>
#include <memory>
#include <optional>
#include <string>

namespace wetspell::addin {

/// Whether somebody looks at this frame.
bool isVisible(const css::uno::Reference<css::frame::XFrame>& frame);

/// A message with one button.
void tell(const css::uno::Reference<css::uno::XComponentContext>& context,
          const css::uno::Reference<css::frame::XFrame>& frame, const std::string& words,
          bool problem = false);

/// The folder that the person picks; nothing when they pick none, or when nobody looks at the frame.
std::optional<std::filesystem::path>
askForFolder(const css::uno::Reference<css::uno::XComponentContext>& context,
             const css::uno::Reference<css::frame::XFrame>& frame, const std::string& title);

/// Progress in the window's status bar, and after a while a small window with a Cancel button.
class ProgressWindow {
public:
  /// `doing`: what is done, "Checking the season".
  ProgressWindow(const css::uno::Reference<css::uno::XComponentContext>& context,
                 const css::uno::Reference<css::frame::XFrame>& frame, const std::string& doing);
  ~ProgressWindow();
  ProgressWindow(const ProgressWindow&) = delete;
  ProgressWindow& operator=(const ProgressWindow&) = delete;

  /// Shows the share done (0 to 1); false when the person has pressed Cancel.
  bool show(double share);

private:
  struct Window;
  std::unique_ptr<Window> window_;
};

} // namespace wetspell::addin
