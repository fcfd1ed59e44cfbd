#pragma once
// Text on its way between the office (UTF-16) and the engine (UTF-8).

#include <rtl/ustring.hxx>

#include <string>
#include <string_view>

namespace wetspell::addin {

/// UTF-8 to the office's text. Bytes that are not UTF-8 become U+FFFD.
inline rtl::OUString toOffice(std::string_view text) {
  return {text.data(), static_cast<sal_Int32>(text.size()), RTL_TEXTENCODING_UTF8};
}

/// The office's text to UTF-8.
inline std::string fromOffice(const rtl::OUString& text) {
  const rtl::OString bytes = rtl::OUStringToOString(text, RTL_TEXTENCODING_UTF8);
  return {bytes.getStr(), static_cast<std::size_t>(bytes.getLength())};
}

} // namespace wetspell::addin
