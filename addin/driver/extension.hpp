#pragma once
// Puts an extension into a running office.

#include "base/css.hpp"

#include <com/sun/star/uno/XComponentContext.hpp>

#include <filesystem>

namespace wetspell::driver {

/// Adds the .oxt for the profile's user. Questions of the office are answered with yes, except that an
/// extension made for another platform or another office is refused. Throws Failure with the reason.
/// Works for root too, which the office's own command for this does not. The office must be started again
/// before it offers everything the extension brings.
void addExtension(const css::uno::Reference<css::uno::XComponentContext>& office,
                  const std::filesystem::path& extension);

} // namespace wetspell::driver
