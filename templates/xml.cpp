#include "xml.hpp"

#include <cassert>
#include <utility>

namespace wetspell::workbook {
namespace {

void escape(std::string& out, std::string_view value, bool in_attribute) {
  for (char c : value) {
    switch (c) {
    case '&':
      out += "&amp;";
      break;
    case '<':
      out += "&lt;";
      break;
    case '>':
      out += "&gt;";
      break;
    case '"':
      out += in_attribute ? "&quot;" : "\"";
      break;
    case '\n': // a reader turns a bare line break inside an attribute into a blank
      out += in_attribute ? "&#10;" : "\n";
      break;
    default:
      out += c;
    }
  }
}

} // namespace

void Xml::finish_tag() {
  if (in_tag_)
    out_ += '>';
  in_tag_ = false;
}

Xml& Xml::open(std::string_view name) {
  finish_tag();
  out_ += '\n';
  return open_inline(name);
}

Xml& Xml::open_inline(std::string_view name) {
  finish_tag();
  out_ += '<';
  out_ += name;
  open_.emplace_back(name);
  in_tag_ = true;
  return *this;
}

Xml& Xml::attribute(std::string_view name, std::string_view value) {
  assert(in_tag_);
  out_ += ' ';
  out_ += name;
  out_ += "=\"";
  escape(out_, value, true);
  out_ += '"';
  return *this;
}

Xml& Xml::text(std::string_view value) {
  finish_tag();
  escape(out_, value, false);
  return *this;
}

Xml& Xml::close() {
  assert(!open_.empty());
  if (in_tag_)
    out_ += "/>";
  else
    out_ += "</" + open_.back() + '>';
  in_tag_ = false;
  open_.pop_back();
  return *this;
}

Xml& Xml::leaf(std::string_view name, std::string_view value) {
  return open_inline(name).text(value).close();
}

std::string Xml::take() && {
  assert(open_.empty());
  return "<?xml version=\"1.0\" encoding=\"UTF-8\"?>" + std::move(out_) + '\n';
}

} // namespace wetspell::workbook
