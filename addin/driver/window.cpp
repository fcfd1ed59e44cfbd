#include "driver/window.hpp"

#include "driver/failure.hpp"

#include <com/sun/star/awt/PosSize.hpp>
#include <com/sun/star/awt/XTopWindow.hpp>
#include <com/sun/star/awt/XWindow.hpp>
#include <com/sun/star/frame/XModel.hpp>
#include <com/sun/star/sheet/XSpreadsheetView.hpp>
#include <fmt/format.h>

#include <charconv>

namespace wetspell::driver {

using css::uno::Reference;
using css::uno::UNO_QUERY;
using css::uno::UNO_QUERY_THROW;

namespace {

Reference<css::frame::XController> controllerOf(const Document& document) {
  return Reference<css::frame::XModel>(document.model(), UNO_QUERY_THROW)->getCurrentController();
}

} // namespace

WindowSize sizeOf(const std::string& text) {
  WindowSize size{};
  const char* const end = text.data() + text.size();
  const auto width = std::from_chars(text.data(), end, size.width);
  if (width.ec == std::errc() && width.ptr != end && *width.ptr == 'x') {
    const auto height = std::from_chars(width.ptr + 1, end, size.height);
    if (height.ec == std::errc() && height.ptr == end && size.width > 0 && size.height > 0) {
      return size;
    }
  }
  throw Failure(fmt::format("'{}' is not a size; one looks like 1600x1000", text));
}

void placeWindow(const Document& document, WindowSize size) {
  const auto window = controllerOf(document)->getFrame()->getContainerWindow();
  window->setPosSize(0, 0, size.width, size.height, css::awt::PosSize::POSSIZE);
  const Reference<css::awt::XTopWindow> top(window, UNO_QUERY);
  if (top.is()) {
    top->toFront();
  }
}

void turnTo(const Document& document, const std::string& sheet) {
  Reference<css::sheet::XSpreadsheetView>(controllerOf(document), UNO_QUERY_THROW)
      ->setActiveSheet(document.sheet(sheet));
}

} // namespace wetspell::driver
