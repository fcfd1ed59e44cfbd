#pragma once
// A workbook to be read only, with nothing in it that reaches outside: an office would fetch linked pictures
// as soon as it opens it, and show an error for a formula whose other file it does not open.

#include "base/css.hpp"

#include <com/sun/star/io/XInputStream.hpp>
#include <com/sun/star/uno/XComponentContext.hpp>

#include <filesystem>
#include <string>

namespace wetspell::addin {

/// What to open in place of a file.
struct CutOff {
  css::uno::Reference<css::io::XInputStream> stream; ///< none: the file itself, which reaches nowhere
  rtl::OUString filter;                              ///< the office's name for its format
};

/// Looks into .ods, .ots, .fods, .xlsx and .xlsm. Of other formats, and of what cannot be unpacked (kept
/// under a password, damaged), the file itself is to be opened.
CutOff without_outside(const css::uno::Reference<css::uno::XComponentContext>& context,
                       const std::filesystem::path& file);

} // namespace wetspell::addin
