#include "row_formulas.hpp"

#include "formula.hpp"
#include "layout.hpp"
#include "names.hpp"

#include "table/table.hpp"

#include <fmt/format.h>

namespace wetspell::workbook {
namespace {

std::string cell(Field field, std::size_t row) {
  return here(column_of(field), row);
}

std::string word(const ChoiceList& list, std::size_t index) {
  return text_literal(list.words[index].label);
}
std::string dry_word() {
  return word(water_words(), static_cast<std::size_t>(Water::none));
}

/// A call over cells that may hold what is no single number ("over 48 in"). Then the cell says so in words.
/// Only that one error is put into words: a missing extension must stay visible, so nothing catches all
/// errors here.
std::string or_words(const std::string& plain, const std::string& call_text) {
  return fmt::format("IF({0};{1};IF(IFNA(ORG.OPENOFFICE.ERRORTYPE({1});0)=502;\"no one number\";{1}))", plain,
                     call_text);
}

std::string temperatures(std::string_view function, std::size_t least, std::size_t row) {
  const std::string readings =
      here(column_of(Field::visit_temperature_1), column_of(Field::visit_temperature_3), row);
  return fmt::format("IF(COUNTA({0})<{1};\"\";{2})", readings, least,
                     or_words(fmt::format("COUNT({0})=COUNTA({0})", readings),
                              call(function, {readings, "unit_temperature"})));
}

std::string depth_class(std::size_t row) {
  const std::string depth = cell(Field::visit_depth, row);
  const std::string classes = table_name(TableKind::depth_classes);
  return fmt::format(
      "IF(ISBLANK({0});IF({1}={2};INDEX({3};1);\"\");{4})", depth, cell(Field::visit_water, row), dry_word(),
      column_name(Field::depth_class_label),
      or_words(fmt::format("ISNUMBER({})", depth), call("POOL.DEPTHCLASS", {depth, "unit_depth", classes})));
}

/// A length or width: as typed, or the count of paces times the pace of whoever paced.
std::string line(Field typed, std::size_t row) {
  const std::string text = cell(typed, row);
  const std::string paced_by = cell(Field::visit_paced_by, row);
  const std::string place = fmt::format("MATCH(IF(ISBLANK({0});{1};{0});{2};0)", paced_by,
                                        cell(Field::visit_person, row), column_name(Field::person_code));
  const std::string pace = fmt::format("INDEX({};{})", column_name(Field::person_pace), place);
  const std::string counts = fmt::format("INDEX({};{})", column_name(Field::person_counts), place);
  const std::string paced =
      fmt::format("IF(ISNA({0});\"no pace known\";IF(ISNUMBER({1});{2};\"no pace known\"))", place, pace,
                  or_words(fmt::format("ISNUMBER({})", text),
                           call("POOL.PACEDLENGTH", {text, pace, counts, "unit_length", "unit_length"})));
  const std::string taped =
      or_words(fmt::format("ISNUMBER({})", text),
               call("POOL.READ", {text, text_literal(name(Kind::length)), "unit_length"}));
  return fmt::format("IF(ISBLANK({0});\"\";IF(OR({1}={2};ISNUMBER(SEARCH(\"pace\";{0}));"
                     "ISNUMBER(SEARCH(\"step\";{0})));{3};{4}))",
                     text, cell(Field::visit_size_tool, row),
                     word(size_tool_words(), static_cast<std::size_t>(SizeTool::paces)), paced, taped);
}

std::string ellipse(std::string_view function, std::string_view unit, std::size_t row) {
  const std::string length = cell(Field::visit_length_read, row), width = cell(Field::visit_width_read, row);
  return fmt::format("IF(AND(ISNUMBER({0});ISNUMBER({1}));{2};\"\")", length, width,
                     call(function, {length, width, "unit_length", std::string(unit)}));
}

/// The typed cells of a row, as the functions for rows take them.
std::string typed_cells(std::size_t row) {
  return here(column_of(Field::visit_pool), column_of(Field::visit_notes), row);
}

} // namespace

std::string person_formula(Field field, std::size_t row) {
  const std::string runs = here(column_of(Field::person_run_1), column_of(Field::person_run_4), row);
  const std::string course = cell(Field::person_course, row), pace = cell(Field::person_pace, row);
  if (field == Field::person_pace)
    return fmt::format(
        "IF(OR(COUNTA({0})=0;ISBLANK({1}));\"\";{2})", runs, course,
        or_words(fmt::format("AND(COUNT({0})=COUNTA({0});ISNUMBER({1}))", runs, course),
                 call("POOL.PACE", {course, runs, cell(Field::person_counts, row), "unit_length"})));
  if (field != Field::person_pace_uncertainty)
    return {};
  // Scatter of the runs about their mean, and a count read to the nearest half either way (rectangular).
  return fmt::format(
      "IF(AND(ISNUMBER({0});COUNT({1})=COUNTA({1}));"
      "{0}*SQRT(IF(COUNT({1})>1;VAR({1})/COUNT({1})/AVERAGE({1})^2;0)+COUNT({1})/12/SUM({1})^2);\"\")",
      pace, runs);
}

std::string visit_formula(Field field, std::size_t row) {
  const std::string depth = cell(Field::visit_depth, row), fill = cell(Field::visit_fill, row);
  switch (field) {
  case Field::visit_mean:
    return temperatures("POOL.MEANOFTHREE", 1, row);
  case Field::visit_spread:
    return temperatures("POOL.SPREAD", 2, row);
  case Field::visit_depth_read:
    return fmt::format("IF(ISBLANK({0});IF({1}={2};0;\"\");{3})", depth, cell(Field::visit_water, row),
                       dry_word(),
                       or_words(fmt::format("ISNUMBER({})", depth),
                                call("POOL.READ", {depth, text_literal(name(Kind::depth)), "unit_depth"})));
  case Field::visit_depth_class_read:
    return depth_class(row);
  case Field::visit_fill_class_read:
    return fmt::format("IF(ISBLANK({0});\"\";{1})", fill,
                       or_words(fmt::format("ISNUMBER({})", fill),
                                call("POOL.FILLCLASS", {fill, table_name(TableKind::fill_classes)})));
  case Field::visit_length_read:
    return line(Field::visit_length, row);
  case Field::visit_width_read:
    return line(Field::visit_width, row);
  case Field::visit_area:
    return ellipse("POOL.ELLIPSEAREA", "unit_area", row);
  case Field::visit_edge:
    return ellipse("POOL.ELLIPSEEDGE", "unit_length", row);
  case Field::visit_doubts:
    return fmt::format(
        "IF(COUNTA({0})=0;\"\";{1})", typed_cells(row),
        call("POOL.DOUBTS",
             {fmt::format("[.${0}${2}:.${1}${2}]", column_letters(column_of(Field::visit_pool)),
                          column_letters(column_of(Field::visit_notes)),
                          layout(TableKind::visits).heading_row + 1),
              typed_cells(row), table_name(TableKind::settings), table_name(TableKind::pools),
              table_name(TableKind::people), table_name(TableKind::depth_classes),
              table_name(TableKind::fill_classes), table_name(TableKind::limits)}));
  default:
    return {};
  }
}

std::string visit_mark(std::size_t row) {
  const std::string doubts = cell(Field::visit_doubts, row);
  return fmt::format("IF(COUNTA({0})=0;\"\";IF({1}=\"\";\"ok\";\"look again\"))", typed_cells(row), doubts);
}

} // namespace wetspell::workbook
