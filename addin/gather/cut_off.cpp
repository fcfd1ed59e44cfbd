#include "gather/cut_off.hpp"

#include "measure/refuse.hpp"

#include <algorithm>
#include <array>
#include <optional>

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
  [[nodiscard]] bool any() const { return any_; }
  std::string text(std::size_t end) && {
    text_ += xml_.substr(from_, end - from_);
    return std::move(text_);
  }

private:
  std::string_view xml_;
  std::string text_;
  std::size_t from_ = 0;
  bool any_ = false;
};

bool starts_with_one_of(std::string_view text, std::initializer_list<std::string_view> beginnings) {
  return std::any_of(beginnings.begin(), beginnings.end(),
                     [&](std::string_view beginning) { return text.starts_with(beginning); });
}

std::string lower(std::string_view text) {
  std::string small(text);
  std::transform(small.begin(), small.end(), small.begin(),
                 [](char c) { return c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c; });
  return small;
}

/// One behind the mark (a tag, a comment, an instruction) that begins at a place; none when it is not whole.
std::size_t end_of_mark(std::string_view xml, std::size_t at) {
  constexpr std::array<std::pair<std::string_view, std::string_view>, 3> others{
      {{"<!--", "-->"}, {"<![CDATA[", "]]>"}, {"<?", "?>"}}};
  for (const auto& [begins, ends] : others)
    if (xml.substr(at).starts_with(begins)) {
      const std::size_t end = xml.find(ends, at + begins.size());
      return end == none ? none : end + ends.size();
    }
  for (std::size_t end = at + 1; end < xml.size(); ++end) {
    if (xml[end] == '>')
      return end + 1;
    if (xml[end] == '"' || xml[end] == '\'')
      end = std::min(xml.find(xml[end], end + 1), xml.size());
  }
  return none;
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

/// Where the first attribute of a tag may begin.
std::size_t behind_name(std::string_view xml, Piece tag) {
  return std::min(xml.find_first_of(blanks, tag.begin), tag.end);
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
  const std::string small = lower(formula);
  return std::any_of(signs.begin(), signs.end(),
                     [&](std::string_view sign) { return small.find(sign) != std::string::npos; });
}

/// What has a scheme, names another computer or spells its signs by number may lead anywhere.
bool leads_away(std::string_view address) {
  return address.find_first_of(":&\\") != none || address.starts_with("//");
}

/// An OpenDocument workbook names its own parts as "Pictures/1.png", "./Object 1" or "#Visits"; Office Open
/// XML has targets, "../media/1.png" or "/xl/media/1.png".
bool leads_out(const Attribute& attribute) {
  if (attribute.name == "href")
    return leads_away(attribute.value) || attribute.value.starts_with('/') ||
           attribute.value.starts_with("..");
  if (attribute.name == "Target")
    return leads_away(attribute.value);
  if (attribute.name == "formula" || attribute.name == "Formula")
    return reaches_outside(attribute.value);
  return attribute.name == "dde-application";
}

void cut_attributes(std::string_view xml, Piece tag, Cut& kept) {
  std::size_t from = behind_name(xml, tag);
  while (const auto attribute = next_attribute(xml, tag, from)) {
    if (leads_out(*attribute))
      kept.leave_out(attribute->place);
    from = attribute->place.end;
  }
}

/// The element of a formula in Office Open XML, from its tag on; nothing when it is an element of another
/// kind.
struct Formula {
  Piece place; ///< the end is none while it is not whole
  bool out = false;
};
std::optional<Formula> formula_at(std::string_view xml, Piece tag) {
  if (local_name(xml, tag) != "f" || xml[tag.end - 2] == '/')
    return std::nullopt;
  const std::size_t inside = xml.find('<', tag.end), end = xml.find("</", tag.end);
  const std::size_t closed = end == none ? none : xml.find('>', end);
  if (closed == none)
    return Formula{{tag.begin, none}};
  if (inside != end && xml[inside + 1] != '!')
    return std::nullopt;
  const std::string_view formula = xml.substr(tag.end, end - tag.end);
  // In brackets stand the workbooks that a formula refers to, and columns of tables.
  return Formula{{tag.begin, closed + 1}, formula.find_first_of("[|<") != none || reaches_outside(formula)};
}

/// Encodings in which marks and quotes are the same bytes as here.
bool is_read_here(std::string_view encoding) {
  const std::string name = lower(encoding);
  return name == "utf-8" || starts_with_one_of(name, {"us-ascii", "iso-8859-", "windows-125"});
}

/// Why a mark lets others read the text otherwise; nothing when it does not.
std::optional<Problem> strange(std::string_view xml, Piece mark) {
  if (xml.substr(mark.begin).starts_with("<?xml")) {
    std::size_t from = behind_name(xml, mark);
    while (const auto attribute = next_attribute(xml, mark, from)) {
      if (attribute->name == "encoding" && !is_read_here(attribute->value))
        return bad_argument(fmt::format("is written in {}", attribute->value));
      from = attribute->place.end;
    }
  }
  if (xml.substr(mark.begin).starts_with("<!DOCTYPE") &&
      xml.substr(mark.begin, mark.end - mark.begin).find('[') != none)
    return bad_argument("makes declarations of its own");
  return std::nullopt;
}

constexpr std::string_view utf8_mark = "\xEF\xBB\xBF";

/// How XML begins in UTF-16, UTF-32 and EBCDIC (Extensible Markup Language 1.0, appendix F).
bool begins_otherwise(std::string_view beginning) {
  using namespace std::string_view_literals;
  return starts_with_one_of(beginning,
                            {"\xFE\xFF"sv, "\xFF\xFE"sv, "<\0"sv, "\0<"sv, "\0\0\0<"sv, "\0\0<\0"sv,
                             "\0\0\xFE\xFF"sv, "\0\0\xFF\xFE"sv, "\x4C\x6F\xA7\x94"sv});
}

/// No mark of a spreadsheet program is longer; what has no end is not waited for.
constexpr std::size_t longest_mark = std::size_t{16} << 20U;

} // namespace

bool is_markup(std::string_view beginning) {
  if (begins_otherwise(beginning))
    return true;
  if (beginning.starts_with(utf8_mark))
    beginning.remove_prefix(utf8_mark.size());
  const std::size_t first = beginning.find_first_not_of(blanks);
  return first != none && beginning[first] == '<';
}

Result<std::string> CutOffMarkup::next(std::string_view piece) {
  if (!begun_ && begins_otherwise(piece))
    return bad_argument("is not written in UTF-8");
  begun_ = true;
  held_ += piece;
  const std::string_view xml = held_;
  Cut kept(xml);
  std::size_t at = xml.find('<');
  for (; at != none; at = xml.find('<', at)) {
    const Piece mark{at, end_of_mark(xml, at)};
    if (mark.end == none)
      break;
    if (auto why = strange(xml, mark))
      return *why;
    at = mark.end;
    if (xml[mark.begin + 1] == '!' || xml[mark.begin + 1] == '?' || xml[mark.begin + 1] == '/')
      continue;
    if (root_.empty())
      root_ = local_name(xml, mark);
    if (const auto formula = formula_at(xml, mark)) {
      if (formula->place.end == none) {
        at = mark.begin;
        break;
      }
      if (formula->out)
        kept.leave_out(formula->place);
      at = formula->place.end;
      continue;
    }
    cut_attributes(xml, mark, kept);
  }
  at = std::min(at, xml.size());
  if (xml.size() - at > longest_mark)
    return bad_argument("has a mark of more than 16 MB");
  cut_ = cut_ || kept.any();
  std::string text = std::move(kept).text(at);
  held_.erase(0, at);
  return text;
}

} // namespace wetspell::addin
