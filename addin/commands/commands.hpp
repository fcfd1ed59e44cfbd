#pragma once
// The commands of the menu and the toolbar: each by its name, with what it does at a window.

#include "base/css.hpp"

#include <com/sun/star/frame/XFrame.hpp>
#include <com/sun/star/uno/XComponentContext.hpp>

#include <span>
#include <string>
#include <string_view>

namespace wetspell::addin {

/// Command addresses are this and a name: "org.wetspell.command:check".
inline constexpr std::string_view commandProtocol = "org.wetspell.command:";

struct Window {
  css::uno::Reference<css::uno::XComponentContext> context;
  css::uno::Reference<css::frame::XFrame> frame;
};

struct Command {
  std::string_view name;             ///< behind the protocol; part of menus that people made: never changed
  std::string (*run)(const Window&); ///< gives what to tell the person; empty: nothing
};

std::span<const Command> commands();
const Command* commandNamed(std::string_view name);

} // namespace wetspell::addin
