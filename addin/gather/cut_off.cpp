#include "gather/cut_off.hpp"

#include <algorithm>
#include <array>

namespace wetspell::addin {

namespace {

constexpr std::size_t none = std::string_view::npos;
constexpr std::string_view blanks = " \t\r\n";

struct Piece {
  std::size_t begin = 0, end = 0; ///< one behind the last sign
};

/// What stands between begin and end is left out of the text.
class Cut {
public:
  explicit Cut(std::string_view xml) : xml_(xml) {}
  void leave_out(Piece piece) {
    text_ += xml_.substr(from_, piece.begin - from_);
    from_ = piece.end;
    any_ = true;
  }
  std::optional<std::string> text() && {
    if (!any_)
      return std::nullopt;
    text_ += xml_.substr(from_);
    return std::move(text_);
  }

private:
  std::string_view xml_;
  std::string text_;
  std::size_t from_ = 0;
  bool any_ = false;
};

/// The next tag from a place on; comments and text that is none of marks are passed over.
std::optional<Piece> next_tag(std::string_view xml, std::size_t from) {
  for (std::size_t at = xml.find('<', from); at != none; at = xml.find('<', at)) {
    const auto behind = [&](std::string_view mark) {
      const std::size_t end = xml.find(mark, at);
      return end == none ? xml.size() : end + mark.size();
    };
    if (xml.substr(at).starts_with("<!--")) {
      at = behind("-->");
      continue;
    }
    if (xml.substr(at).starts_with("<![CDATA[")) {
      at = behind("]]>");
      continue;
    }
    for (std::size_t end = at + 1; end < xml.size(); ++end) {
      if (xml[end] == '>')
        return Piece{at, end + 1};
      if (xml[end] == '"' || xml[end] == '\'')
        end = std::min(xml.find(xml[end], end + 1), xml.size());
    }
    return std::nullopt;
  }
  return std::nullopt;
}

struct Attribute {
  std::string_view name, value; ///< the name without its prefix
  Piece place;                  ///< with the blanks before it
};

/// The attribute of a tag that begins behind a place.
std::optional<Attribute> next_attribute(std::string_view xml, Piece tag, std::size_t from) {
  const std::size_t name = xml.find_first_not_of(blanks, from);
  const std::size_t equals = xml.find('=', from);
  if (name == none || equals >= tag.end)
    return std::nullopt;
  const std::size_t quote = xml.find_first_not_of(blanks, equals + 1);
  if (quote >= tag.end || (xml[quote] != '"' && xml[quote] != '\''))
    return std::nullopt;
  const std::size_t end = xml.find(xml[quote], quote + 1);
  if (end >= tag.end)
    return std::nullopt;
  std::string_view words = xml.substr(name, equals - name);
  words = words.substr(0, words.find_last_not_of(blanks) + 1);
  words.remove_prefix(words.find(':') + 1); // without a prefix that is 0
  return Attribute{words, xml.substr(quote + 1, end - quote - 1), {from, end + 1}};
}

std::string_view local_name(std::string_view xml, Piece tag) {
  std::string_view name = xml.substr(tag.begin + 1, tag.end - tag.begin - 2);
  name = name.substr(0, name.find_first_of(" \t\r\n/"));
  return name.substr(name.find(':') + 1);
}

/// Whether a formula may refer to what is not in its workbook. A formula that is kept by mistake could ask;
/// of one that is left out by mistake the stored result stays, which is what its person saw.
bool reaches_outside(std::string_view formula) {
  constexpr std::array<std::string_view, 8> signs{"://", "file:",   "webservice", "dde(",
                                                  "'#",  "&apos;#", "\\\\",       "&#"};
  std::string lower(formula);
  std::transform(lower.begin(), lower.end(), lower.begin(),
                 [](char c) { return c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c; });
  return std::any_of(signs.begin(), signs.end(),
                     [&](std::string_view sign) { return lower.find(sign) != std::string::npos; });
}

/// What has a scheme, names another computer or spells its signs by number may lead anywhere.
bool leads_away(std::string_view address) {
  return address.find_first_of(":&\\") != none || address.starts_with("//");
}

/// An OpenDocument workbook names its own parts as "Pictures/1.png", "./Object 1" or "#Visits".
bool leads_out(const Attribute& attribute) {
  if (attribute.name == "href")
    return leads_away(attribute.value) || attribute.value.starts_with('/') ||
           attribute.value.starts_with("..");
  if (attribute.name == "formula")
    return reaches_outside(attribute.value);
  return attribute.name == "dde-application";
}

/// The other kind as "../media/1.png" or "/xl/media/1.png".
bool is_target_outside(const Attribute& attribute) {
  return attribute.name == "Target" && leads_away(attribute.value);
}

std::optional<std::string> without_attributes(std::string_view xml, bool (*leave_out)(const Attribute&)) {
  Cut cut(xml);
  for (auto tag = next_tag(xml, 0); tag; tag = next_tag(xml, tag->end)) {
    std::size_t at = std::min(xml.find_first_of(blanks, tag->begin), tag->end);
    while (const auto attribute = next_attribute(xml, *tag, at)) {
      if (leave_out(*attribute))
        cut.leave_out(attribute->place);
      at = attribute->place.end;
    }
  }
  return std::move(cut).text();
}

} // namespace

std::optional<std::string> cut_off_open_document(std::string_view xml) {
  return without_attributes(xml, leads_out);
}

std::optional<std::string> cut_off_relations(std::string_view xml) {
  return without_attributes(xml, is_target_outside);
}

std::optional<std::string> cut_off_sheet(std::string_view xml) {
  Cut cut(xml);
  for (auto tag = next_tag(xml, 0); tag; tag = next_tag(xml, tag->end)) {
    if (local_name(xml, *tag) != "f" || xml[tag->end - 2] == '/')
      continue;
    const std::size_t end = xml.find("</", tag->end);
    const std::size_t closed = end == none ? none : xml.find('>', end);
    if (closed == none)
      break;
    const std::string_view formula = xml.substr(tag->end, end - tag->end);
    // In brackets stand the workbooks that a formula refers to, and columns of tables.
    if (formula.find('[') != none || formula.find('|') != none || reaches_outside(formula))
      cut.leave_out({tag->begin, closed + 1});
  }
  return std::move(cut).text();
}

} // namespace wetspell::addin
