#include "fods.hpp"

#include "fods_parts.hpp"

#include <array>
#include <utility>

namespace wetspell::workbook {
namespace {

constexpr std::array<std::pair<std::string_view, std::string_view>, 14> namespaces{{
    {"xmlns:office", "urn:oasis:names:tc:opendocument:xmlns:office:1.0"},
    {"xmlns:table", "urn:oasis:names:tc:opendocument:xmlns:table:1.0"},
    {"xmlns:text", "urn:oasis:names:tc:opendocument:xmlns:text:1.0"},
    {"xmlns:style", "urn:oasis:names:tc:opendocument:xmlns:style:1.0"},
    {"xmlns:number", "urn:oasis:names:tc:opendocument:xmlns:datastyle:1.0"},
    {"xmlns:meta", "urn:oasis:names:tc:opendocument:xmlns:meta:1.0"},
    {"xmlns:config", "urn:oasis:names:tc:opendocument:xmlns:config:1.0"},
    {"xmlns:fo", "urn:oasis:names:tc:opendocument:xmlns:xsl-fo-compatible:1.0"},
    {"xmlns:svg", "urn:oasis:names:tc:opendocument:xmlns:svg-compatible:1.0"},
    {"xmlns:of", "urn:oasis:names:tc:opendocument:xmlns:of:1.2"},
    {"xmlns:ooo", "http://openoffice.org/2004/office"}, // part of the names of settings
    {"xmlns:xlink", "http://www.w3.org/1999/xlink"},
    {"xmlns:dc", "http://purl.org/dc/elements/1.1/"},
    {"xmlns:calcext", "urn:org:documentfoundation:names:experimental:calc:xmlns:calcext:1.0"},
}};

void write_meta(Xml& xml, const Workbook& workbook) {
  xml.open("office:meta");
  xml.open("dc:title").text(workbook.title).close();
  xml.open("dc:subject").text(workbook.subject).close();
  xml.open("dc:description").text(workbook.description).close();
  xml.open("meta:user-defined")
      .attribute("meta:name", "Wetspell version")
      .attribute("meta:value-type", "string")
      .text(workbook.version)
      .close();
  xml.close();
}

} // namespace

std::string to_fods(const Workbook& workbook) {
  Xml xml;
  xml.open("office:document");
  for (const auto& [prefix, uri] : namespaces)
    xml.attribute(prefix, uri);
  xml.attribute("office:version", "1.3")
      .attribute("office:mimetype", "application/vnd.oasis.opendocument.spreadsheet");
  write_meta(xml, workbook);
  write_settings(xml, workbook);
  write_styles(xml);
  write_automatic_styles(xml, workbook);
  write_body(xml, workbook);
  xml.close();
  return std::move(xml).take();
}

} // namespace wetspell::workbook
