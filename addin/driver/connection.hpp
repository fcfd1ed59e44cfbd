#pragma once
// From our process to an office that listens on a named pipe.

#include "base/css.hpp"

#include <com/sun/star/uno/XComponentContext.hpp>

#include <string>

namespace wetspell::driver {

/// The context of the office that listens on the pipe, or an empty reference when nobody does yet.
/// Throws Failure when our own end cannot work (types or libraries of the office not found).
css::uno::Reference<css::uno::XComponentContext> connect(const std::string& pipe);

} // namespace wetspell::driver
