// A small season, and files that come back for it.
#pragma once

#include "engine/check/fixture.hpp"
#include "gather/plan.hpp"

#include <gtest/gtest.h>

namespace wetspell::test {

using Rows = std::vector<std::vector<std::string>>;

inline Rows season_visits() {
  return {{"pool", "date", "start", "person", "water", "depth", "notes", "source_file", "source_row"},
          {"B01", "2026-04-18", "", "RW", "standing water", "20", "", "", ""},
          {"B02", "2026-04-19", "09:40", "AL", "standing water", "14", "typed here", "", ""}};
}

inline Season season_of(const Rows& visits, const Rows& life = {}) {
  std::vector<Table> sheets;
  sheets.push_back(fixture_table(TableKind::pools, {{"pool", "name"}, {"B01", "Alder"}, {"B02", "Birch"}}));
  sheets.push_back(
      fixture_table(TableKind::people, {{"person", "name"}, {"RW", "Rowan West"}, {"AL", "Ada Lund"}}));
  sheets.push_back(fixture_table(TableKind::visits, visits));
  if (!life.empty())
    sheets.push_back(fixture_table(TableKind::life, life));
  auto season = read_season(std::move(sheets), fixture_today());
  EXPECT_TRUE(season);
  return std::move(season).value();
}

/// A sheet as people lay it out: the first row holds headings.
inline Table sheet(const std::string& name, const Rows& rows) {
  Table table(Place{name, 1, 0}, rows.size(), rows.front().size());
  for (std::size_t row = 0; row < rows.size(); ++row)
    for (std::size_t column = 0; column < rows[row].size(); ++column)
      table.at(row, column) = fixture_cell(rows[row][column]);
  return table;
}

inline CameFile came(const Season& season, const std::string& file, const Rows& visits) {
  return came_in(file, {sheet("Visits", visits)}, season);
}

/// The cells of a table of records with what a plan adds and carries into it, as rows of a fixture.
inline Rows after(const Season& season, const GatherPlan& plan, TableKind kind = TableKind::visits) {
  const auto all = fields(kind);
  Rows rows{{}};
  for (const FieldSpec& field : all)
    rows[0].emplace_back(field.name);
  const auto text = [](const Cell& cell) {
    return cell.kind() == CellKind::text ? "\"" + to_text(cell) + "\"" : to_text(cell);
  };
  const auto put = [&](auto cell_of) {
    std::vector<std::string>& row = rows.emplace_back();
    for (const FieldSpec& field : all)
      row.push_back(text(cell_of(field.field)));
  };
  const Located& at = season.where(kind);
  for (auto row = static_cast<std::uint32_t>(at.first_row); row < at.end_row; ++row)
    put([&](Field field) {
      for (const CarriedCell& carried : plan.carried)
        if (carried.row == row && carried.field == field)
          return carried.cell;
      return season.cell(field, row);
    });
  for (const AddedRow& added : kind == TableKind::life ? plan.life : plan.visits)
    put([&](Field field) {
      return added.cells[static_cast<std::size_t>(field) - static_cast<std::size_t>(all[0].field)];
    });
  return rows;
}

} // namespace wetspell::test
