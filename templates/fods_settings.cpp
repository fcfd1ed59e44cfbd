#include "fods_parts.hpp"

namespace wetspell::workbook {
namespace {

void item(Xml& xml, std::string_view name, std::string_view type, std::string_view value) {
  xml.open("config:config-item")
      .attribute("config:name", name)
      .attribute("config:type", type)
      .text(value)
      .close();
}

// Split mode 2: frozen, not a movable split.
void frozen(Xml& xml, const char* side, const char* far_pane, std::size_t count) {
  if (count == 0)
    return;
  const std::string number = std::to_string(count);
  item(xml, std::string(side) + "SplitMode", "short", "2");
  item(xml, std::string(side) + "SplitPosition", "int", number);
  item(xml, far_pane, "int", number);
}

void sheet_view(Xml& xml, const Sheet& sheet) {
  xml.open("config:config-item-map-entry").attribute("config:name", sheet.name);
  item(xml, "CursorPositionX", "int", "0");
  item(xml, "CursorPositionY", "int", std::to_string(sheet.frozen_rows));
  frozen(xml, "Horizontal", "PositionRight", sheet.frozen_columns);
  frozen(xml, "Vertical", "PositionBottom", sheet.frozen_rows);
  // The pane with the cursor: 3 bottom right, 2 bottom left.
  item(xml, "ActiveSplitRange", "short", sheet.frozen_columns > 0 && sheet.frozen_rows > 0 ? "3" : "2");
  item(xml, "ZoomType", "short", "0");
  item(xml, "ZoomValue", "int", "100");
  item(xml, "ShowGrid", "boolean", "false");
  xml.close();
}

} // namespace

void write_settings(Xml& xml, const Workbook& workbook) {
  xml.open("office:settings");
  xml.open("config:config-item-set").attribute("config:name", "ooo:view-settings");
  xml.open("config:config-item-map-indexed").attribute("config:name", "Views");
  xml.open("config:config-item-map-entry");
  item(xml, "ViewId", "string", "view1");
  xml.open("config:config-item-map-named").attribute("config:name", "Tables");
  for (const Sheet& sheet : workbook.sheets)
    sheet_view(xml, sheet);
  xml.close();
  item(xml, "ActiveTable", "string", workbook.sheets.front().name);
  item(xml, "ShowGrid", "boolean", "false");
  item(xml, "ShowPageBreaks", "boolean", "false");
  item(xml, "HasColumnRowHeaders", "boolean", "true");
  item(xml, "HasSheetTabs", "boolean", "true");
  xml.close().close().close();
  xml.open("config:config-item-set").attribute("config:name", "ooo:configuration-settings");
  item(xml, "ShowGrid", "boolean", "false");
  xml.close();
  xml.close();
}

} // namespace wetspell::workbook
