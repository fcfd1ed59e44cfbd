// XML written element by element, escaped and closed by construction.
#pragma once

#include <string>
#include <string_view>
#include <vector>

namespace wetspell::workbook {

class Xml {
public:
  /// Starts an element on a line of its own; attributes may follow until its first content.
  Xml& open(std::string_view name);
  /// Starts an element where white space would count: inside a paragraph.
  Xml& open_inline(std::string_view name);
  Xml& attribute(std::string_view name, std::string_view value);
  Xml& attribute(std::string_view name, std::size_t value) { return attribute(name, std::to_string(value)); }
  Xml& text(std::string_view value);
  Xml& close();
  /// An element without content besides one text.
  Xml& leaf(std::string_view name, std::string_view value);

  /// The whole document; all elements must be closed.
  [[nodiscard]] std::string take() &&;

private:
  void finish_tag();
  std::string out_;
  std::vector<std::string> open_;
  bool in_tag_ = false;
};

} // namespace wetspell::workbook
