#pragma once
// What stands on printed pages, as poppler's pdftotext reads it.

#include "text_of.hpp"

#include <gtest/gtest.h>

#include <cstdlib>

namespace wetspell::host {

/// The words of all pages; fails the test when it is no PDF.
inline std::string wordsOnPages(const std::filesystem::path& pdf) {
  const std::filesystem::path text = pdf.string() + ".txt";
  EXPECT_EQ(std::system(("pdftotext -layout '" + pdf.string() + "' '" + text.string() + "'").c_str()), 0);
  return test::text_of(text);
}

} // namespace wetspell::host
