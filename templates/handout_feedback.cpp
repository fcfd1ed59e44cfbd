// What a handout says of a row while it is typed: formulas that every spreadsheet program knows. What is
// doubtful ends with a question mark, and stands before what is worked out. A reading with a unit behind it
// is a text, and is left to whoever gathers the handouts.
#include "formula.hpp"
#include "handout_plan.hpp"

#include "quantity/print.hpp"

#include <fmt/format.h>
#include <fmt/ranges.h>

namespace wetspell::workbook::handout {
namespace {

/// IF(condition; "words "; "")
std::string say(const std::string& condition, std::string_view words) {
  return fmt::format("IF({};{};\"\")", condition, text_literal(fmt::format("{} ", words)));
}

class Row {
public:
  Row(const HandoutPlan& plan, TableKind table, std::size_t row) : plan_(plan), table_(table), row_(row) {}

  [[nodiscard]] bool has(Field field) const { return plan_.column(field).has_value(); }
  /// Whether the handout has all of them.
  template <class... Fields> [[nodiscard]] bool has(Field field, Fields... more) const {
    return has(field) && has(more...);
  }
  [[nodiscard]] std::string cell(Field field) const { return here(plan_.column(field).value_or(0), row_); }
  [[nodiscard]] std::string cells(Field first, Field last) const {
    return here(plan_.column(first).value_or(0), plan_.column(last).value_or(0), row_);
  }
  [[nodiscard]] std::string is_number(Field field) const { return fmt::format("ISNUMBER({})", cell(field)); }

  void add(std::string piece) { pieces_.push_back(std::move(piece)); }
  /// Words while a number meets a test; AND would compare texts too.
  void ask(Field field, std::string_view test, std::string_view words) {
    add(fmt::format("IF({};{};\"\")", is_number(field), say(cell(field) + std::string(test), words)));
  }

  void ask_pool_and_day(Field pool, Field date) {
    add(say(cell(pool) + "=\"\"", "Which pool?"));
    add(say(cell(date) + "=\"\"", "Which day?"));
    ask(date, ">TODAY()", "A day to come?");
    if (const auto year = plan_.season.settings.season_year)
      add(fmt::format(
          "IF({};{};\"\")", is_number(date),
          say(fmt::format("YEAR({})<>{}", cell(date), *year), fmt::format("Another year than {}?", *year))));
  }

  /// The whole formula: blank while nothing is typed.
  [[nodiscard]] std::string formula() const {
    return fmt::format("IF(COUNTA({})=0;\"\";TRIM({}))", typed_in_row(plan_, table_, row_),
                       fmt::join(pieces_, "&"));
  }

private:
  const HandoutPlan& plan_;
  TableKind table_;
  std::size_t row_;
  std::vector<std::string> pieces_;
};

struct Said {
  const Season& season;
  Unit unit;
  [[nodiscard]] std::string formula(Limit limit) const { return number(from_si(season.limits[limit], unit)); }
  [[nodiscard]] std::string words(Limit limit) const { return print(season.limits[limit], unit); }
};

void ask_temperatures(Row& row, const HandoutPlan& plan) {
  const Said said{plan.season, plan.season.settings.temperature};
  const std::string all = row.cells(Field::visit_temperature_1, Field::visit_temperature_3);
  const double spread = plan.season.limits[Limit::temperature_spread];
  row.add(fmt::format(
      "IF(COUNT({0})>1;{1};\"\")", all,
      say(fmt::format("MAX({0})-MIN({0})>{1}", all, number(difference_from_si(spread, said.unit))),
          fmt::format("Temperatures more than {} apart: read again?", print_difference(spread, said.unit)))));
  row.add(fmt::format(
      "IF(COUNT({0})>0;{1};\"\")", all,
      say(fmt::format("OR(MIN({0})<{1};MAX({0})>{2})", all, said.formula(Limit::temperature_doubtful_low),
                      said.formula(Limit::temperature_doubtful_high)),
          fmt::format("Water below {} or above {}: read in the other unit?",
                      said.words(Limit::temperature_doubtful_low),
                      said.words(Limit::temperature_doubtful_high)))));
}

void tell_mean(Row& row, const HandoutPlan& plan) {
  const std::string all = row.cells(Field::visit_temperature_1, Field::visit_temperature_3);
  const std::string unit(symbol(plan.season.settings.temperature));
  row.add(
      fmt::format("IF(AND(COUNT({0})>0;COUNT({0})=COUNTA({0}));\"Mean \"&ROUND(AVERAGE({0});1)&\" {1}\"&"
                  "IF(COUNT({0})>1;\", apart by \"&ROUND(MAX({0})-MIN({0});1)&\" {1}\";\"\")&\". \";\"\")",
                  all, unit));
}

void ask_depth(Row& row, const HandoutPlan& plan) {
  const Said said{plan.season, plan.season.settings.depth};
  row.ask(Field::visit_depth, ">" + said.formula(Limit::depth_most),
          fmt::format("Depth is more than the limit of {}: read again?", said.words(Limit::depth_most)));
  row.ask(Field::visit_depth, ">" + said.formula(Limit::depth_doubtful),
          fmt::format("Deeper than {} is rare: is it right?", said.words(Limit::depth_doubtful)));
  row.ask(Field::visit_depth, ">" + said.formula(Limit::depth_wading),
          fmt::format("Do not wade deeper than {}.", said.words(Limit::depth_wading)));
}

std::string word(const ChoiceList& list, std::size_t index) {
  return text_literal(list.words[index].label);
}

/// Numbers that a pool without water cannot have.
void ask_dry(Row& row) {
  std::vector<std::string> wet;
  for (const Field field : {Field::visit_temperature_1, Field::visit_depth, Field::visit_fill})
    if (row.has(field))
      wet.push_back(fmt::format("IF({};{}<>0;FALSE())", row.is_number(field), row.cell(field)));
  if (!wet.empty())
    row.add(fmt::format(
        "IF({}={};{};\"\")", row.cell(Field::visit_water),
        word(water_words(), static_cast<std::size_t>(Water::none)),
        say(fmt::format("OR({})", fmt::join(wet, ";")), "No standing water, yet readings of it?")));
}

/// Whether length and width are counts of paces.
std::string paced(const Row& row) {
  return row.has(Field::visit_size_tool)
             ? fmt::format("{}={}", row.cell(Field::visit_size_tool),
                           word(size_tool_words(), static_cast<std::size_t>(SizeTool::paces)))
             : std::string("FALSE()");
}

std::string both_sizes(const Row& row) {
  return fmt::format("AND({};{})", row.is_number(Field::visit_length), row.is_number(Field::visit_width));
}

void ask_size(Row& row, const HandoutPlan& plan) {
  const Said said{plan.season, plan.season.settings.length};
  row.add(fmt::format("IF({};{};\"\")", both_sizes(row),
                      say(fmt::format("{}>{}", row.cell(Field::visit_width), row.cell(Field::visit_length)),
                          "Wider than long: the other way round?")));
  row.add(fmt::format(
      "IF({};{};{})", paced(row),
      say(fmt::format("NOT(ISNUMBER({}))", pace_cell()),
          fmt::format("How long is your pace? Walk a taped course (sheet {}).", you_name)),
      fmt::format("IF({};{};\"\")", row.is_number(Field::visit_length),
                  say(row.cell(Field::visit_length) + ">" + said.formula(Limit::length_most),
                      fmt::format("Longer than {}: read again?", said.words(Limit::length_most))))));
}

/// The ellipse on length and width, as measured or by the person's own paces.
void tell_area(Row& row, const HandoutPlan& plan) {
  const Settings& settings = plan.season.settings;
  const double side = to_si(1, settings.length);
  const std::string ellipse =
      fmt::format("PI()/4*{}*{}*{}", row.cell(Field::visit_length), row.cell(Field::visit_width),
                  number(from_si(side * side, settings.area)));
  const std::string one =
      fmt::format("({}/IF({}={};2;1))", pace_cell(), counts_cell(),
                  word(counting_way_words(), static_cast<std::size_t>(CountingWay::steps)));
  const auto tell = [&](const std::string& area, std::string_view how) {
    return fmt::format("\"Area about \"&ROUND({};{})&\" {}{}. \"", area, spec(settings.area).decimals,
                       symbol(settings.area), how);
  };
  row.add(fmt::format("IF({};IF({};IF(ISNUMBER({});{};\"\");{});\"\")", both_sizes(row), paced(row),
                      pace_cell(), tell(fmt::format("{}*{}^2", ellipse, one), " by your paces"),
                      tell(ellipse, "")));
}

} // namespace

std::string visit_feedback(const HandoutPlan& plan, std::size_t at) {
  Row row(plan, TableKind::visits, at);
  row.ask_pool_and_day(Field::visit_pool, Field::visit_date);
  if (row.has(Field::visit_start, Field::visit_end))
    row.add(fmt::format(
        "IF(AND({};{});{};\"\")", row.is_number(Field::visit_start), row.is_number(Field::visit_end),
        say(row.cell(Field::visit_end) + "<" + row.cell(Field::visit_start), "Done before you began?")));
  const bool temperatures =
      row.has(Field::visit_temperature_1, Field::visit_temperature_2, Field::visit_temperature_3);
  const bool sizes = row.has(Field::visit_length, Field::visit_width);
  if (temperatures)
    ask_temperatures(row, plan);
  if (row.has(Field::visit_depth))
    ask_depth(row, plan);
  if (row.has(Field::visit_water))
    ask_dry(row);
  if (sizes)
    ask_size(row, plan);
  if (row.has(Field::visit_isolated, Field::visit_joined))
    row.add(say(fmt::format("AND({0}={1};{2}<>\"\";{2}<>{3})", row.cell(Field::visit_isolated),
                            word(yes_no_words(), static_cast<std::size_t>(YesNo::yes)),
                            row.cell(Field::visit_joined),
                            word(joined_words(), static_cast<std::size_t>(Joined::nothing))),
                "Isolated, yet joined to other water?"));
  if (temperatures)
    tell_mean(row, plan);
  if (sizes)
    tell_area(row, plan);
  return row.formula();
}

std::string life_feedback(const HandoutPlan& plan, std::size_t at) {
  Row row(plan, TableKind::life, at);
  row.ask_pool_and_day(Field::life_pool, Field::life_date);
  row.add(say(row.cell(Field::life_species) + "=\"\"", "Which animal?"));
  if (row.has(Field::life_by_first))
    row.add(say(row.cell(Field::life_by_first) + "=\"\"", "How many? (0: looked for and not seen)"));
  if (row.has(Field::life_by_first, Field::life_by_second, Field::life_by_both))
    row.ask(Field::life_by_both,
            fmt::format(">MIN({};{})", row.cell(Field::life_by_first), row.cell(Field::life_by_second)),
            "Seen by both cannot be more than the smaller count: read again?");
  return row.formula();
}

} // namespace wetspell::workbook::handout
