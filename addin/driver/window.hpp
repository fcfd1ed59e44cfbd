#pragma once
// The window of a visible document, for pictures of it.

#include "driver/document.hpp"

namespace wetspell::driver {

struct WindowSize {
  int width;  ///< pixels
  int height; ///< pixels
};

/// "1600x1000". Throws Failure for anything else.
WindowSize sizeOf(const std::string& text);

/// Puts the document's window at the screen's upper left corner, in front.
void placeWindow(const Document& document, WindowSize size);

/// Shows a sheet.
void turnTo(const Document& document, const std::string& sheet);

} // namespace wetspell::driver
