// Thirty-odd layouts of our own invention, each with known truth: fields, units, rows and values must come
// out.
#include "engine/audit/styles.hpp"

#include "quantity/print.hpp"

#include <gtest/gtest.h>

#include <algorithm>

namespace wetspell::testing {
namespace {

constexpr double today = 46280; // 2026-09-15

class Layouts : public ::testing::TestWithParam<Style> {};

TEST_P(Layouts, FieldsUnitsRowsAndValuesComeOut) {
  const Style& style = GetParam();
  const auto truth = true_visits(style.metric);
  const Audit audit = wetspell::audit("old.ods", written(style), {nullptr, today});
  ASSERT_TRUE(audit.season);
  const bool long_form = style.layout == Layout::row_a_reading;

  // Every column is mapped to its field, in its unit; columns that are not ours are left alone.
  std::size_t mapped = 0;
  for (const AuditedTable& table : audit.tables) {
    EXPECT_EQ(table.kind, TableKind::visits) << table.reason;
    EXPECT_EQ(table.layout, style.layout);
    for (const AuditedColumn& column : table.columns) {
      const Mapping& m = column.mapping;
      EXPECT_TRUE(m.open() || m.confidence >= sure_enough) << m.heading;
      EXPECT_FALSE(m.reason.empty());
      for (const std::string& foreign : style.foreign)
        EXPECT_TRUE(m.heading != foreign || m.open())
            << foreign << " was taken for " << meaning_word(m.field, m.part, m.count);
      mapped += !m.open();
    }
  }
  if (!long_form)
    for (const AuditedTable& table : audit.tables)
      for (const auto& [field, words] : style.columns) {
        if (field == Field::visit_date && style.dates == Dates::parts)
          continue;
        const auto at = std::find_if(
            table.columns.begin(), table.columns.end(),
            [field = field](const AuditedColumn& column) { return column.mapping.field == field; });
        ASSERT_NE(at, table.columns.end()) << words << " was left open";
        // Pools and days at the sides of a cell a visit stand for themselves.
        const bool side = style.layout == Layout::cell_a_visit && field != style.columns.back().first;
        EXPECT_TRUE(side || at->mapping.heading.find(words) != std::string::npos) << at->mapping.heading;
        EXPECT_EQ(at->mapping.unit, unit_of(field, style.metric)) << words << ": " << at->mapping.reason;
        EXPECT_FALSE(at->mapping.unit_open) << words;
      }
  EXPECT_GT(mapped, 0u);

  // Every visit is there once, with its readings.
  const Season& season = *audit.season;
  ASSERT_EQ(season.visits.size(), truth.size());
  EXPECT_EQ(audit.rows.all(), truth.size());
  EXPECT_EQ(audit.rows.unusable, 0u);
  EXPECT_EQ(audit.unread_count, style.notes_in_numbers ? 1u : 0u)
      << (audit.unread.empty() ? "" : audit.unread.front().text + ": " + audit.unread.front().reason);
  for (const TrueVisit& expected : truth) {
    const auto visit = std::find_if(season.visits.begin(), season.visits.end(), [&](const Visit& v) {
      return v.pool.known() && season.pools[static_cast<std::size_t>(v.pool.index)].code == expected.pool &&
             v.date.si == expected.date;
    });
    ASSERT_NE(visit, season.visits.end())
        << expected.pool << " on " << print_date(expected.date) << "; " << audit.tables.front().date_reason;
    for (const auto& [field, words] : style.columns) {
      const auto reading = expected.readings.find(field);
      if (reading == expected.readings.end())
        continue;
      const auto* member = std::get_if<Quantity Visit::*>(&spec(field).member);
      ASSERT_NE(member, nullptr);
      const Quantity& read = (*visit).**member;
      const bool spoiled = style.notes_in_numbers && field == Field::visit_depth && &expected == &truth[4];
      if (spoiled) {
        EXPECT_EQ(read.status, Status::bad);
        continue;
      }
      EXPECT_NEAR(read.si, to_si(reading->second, unit_of(field, style.metric)), 1e-9) << words;
    }
    EXPECT_TRUE(long_form || style.columns != usual || visit->water.is(Water::standing));
  }
  // What was passed over is told.
  if (style.sums) {
    const auto& passed = audit.tables.front().passed;
    EXPECT_TRUE(std::any_of(passed.begin(), passed.end(), [](const AuditedRow& row) {
      return row.use == RowUse::sums && row.text == "Total";
    }));
  }
}

TEST_P(Layouts, EveryValueLeadsToTheCellThatHoldsIt) {
  const Style& style = GetParam();
  const auto sheets = written(style);
  const Audit audit = wetspell::audit("old.ods", sheets, {nullptr, today});
  const auto at = [&](const Place& place) -> const Cell& {
    const auto sheet = std::find_if(sheets.begin(), sheets.end(),
                                    [&](const Table& each) { return each.sheet() == place.sheet; });
    return sheet->at(place.row - 1, place.column);
  };
  std::size_t looked_at = 0;
  for (const TidyTable& tidy : audit.tidy)
    for (const auto& [field, words] : style.columns) {
      const std::int32_t column = tidy.column(field);
      const auto* member = std::get_if<Quantity Visit::*>(&spec(field).member);
      if (column < 0 || member == nullptr || spec(field).kind == Kind::date)
        continue;
      for (const Visit& visit : audit.season->visits) {
        const Quantity& reading = visit.**member;
        if (!reading.has_value())
          continue;
        const Quantity there = read(at(audit.source(tidy, visit.row - 1, static_cast<std::size_t>(column))),
                                    {.kind = spec(field).kind, .assume = unit_of(field, style.metric)});
        EXPECT_NEAR(there.si, reading.si, 1e-9) << words;
        ++looked_at;
      }
    }
  EXPECT_GE(looked_at, 23u);
}

TEST(LayoutList, AreThirtyOrMoreAndAllDifferent) {
  const auto styles = all_styles();
  EXPECT_GE(styles.size(), 30u);
  for (std::size_t i = 0; i < styles.size(); ++i)
    for (std::size_t j = i + 1; j < styles.size(); ++j) {
      const auto one = written(styles[i]);
      const auto other = written(styles[j]);
      bool same = one.size() == other.size() && one[0].rows() == other[0].rows() &&
                  one[0].columns() == other[0].columns();
      for (std::size_t row = 0; same && row < one[0].rows(); ++row)
        for (std::size_t column = 0; same && column < one[0].columns(); ++column)
          same = one[0].at(row, column) == other[0].at(row, column);
      EXPECT_FALSE(same) << styles[i].name << " and " << styles[j].name;
    }
}

INSTANTIATE_TEST_SUITE_P(Old, Layouts, ::testing::ValuesIn(all_styles()),
                         [](const auto& each) { return each.param.name; });

} // namespace
} // namespace wetspell::testing
