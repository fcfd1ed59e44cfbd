#include "measure/class_table.hpp"

#include "engine/measure/digits.hpp"

#include <limits>
#include <vector>

namespace wetspell {
namespace {

using test::agrees;
using test::value_of;
using testing::HasSubstr;

constexpr double inf = std::numeric_limits<double>::infinity();

Cell number(double value) {
  return Cell::of_number(value);
}
Cell words(const char* value) {
  return Cell::of_text(value);
}

TEST(ClassTableFrom, ReadsOneAsEdited) {
  const std::vector<Cell> cells{words("dry"),     number(0),  number(0),  //
                                words("shallow"), number(0),  number(10), //
                                words("deep"),    number(10), {},         //
                                words("unsure"),  {},         {}};
  const auto table = value_of(class_table_from(cells, 3, default_depth_classes()));
  ASSERT_EQ(table.rows.size(), 3U);
  EXPECT_EQ(table.name, "depth");
  EXPECT_EQ(table.unit, Unit::inch);
  EXPECT_EQ(table.not_known, "unsure");
  EXPECT_EQ(table.rows[2].low, 10);
  EXPECT_EQ(table.rows[2].high, inf);
  EXPECT_EQ(table.rows[value_of(classify(table, 0, Unit::inch))].label, "dry");
  EXPECT_EQ(table.rows[value_of(classify(table, 25.4, Unit::centimetre))].label, "shallow");
  EXPECT_EQ(table.rows[value_of(classify(table, 10.1, Unit::inch))].label, "deep");
}

TEST(ClassTableFrom, PassesOverHeadingsBlankRowsAndMoreColumnsInAnyOrder) {
  const std::vector<Cell> cells{words("class"),
                                words("over"),
                                words("up to"),
                                words("remark"), //
                                words("deep"),
                                number(10),
                                {},
                                {}, //
                                {},
                                {},
                                {},
                                words("spare"), //
                                words("low"),
                                {},
                                number(10),
                                {}};
  const auto table = value_of(class_table_from(cells, 4, default_depth_classes()));
  ASSERT_EQ(table.rows.size(), 2U);
  EXPECT_EQ(table.rows[0].label, "low");
  EXPECT_EQ(table.rows[0].low, -inf);
  EXPECT_EQ(table.not_known, "not known");
}

TEST(ClassTableFrom, TakesLimitsWithUnits) {
  const std::vector<Cell> cells{words("low"),  words("0 cm"), words("15.24 cm"), //
                                words("high"), words("6 in"), words("2 ft")};
  const auto table = value_of(class_table_from(cells, 3, default_depth_classes()));
  EXPECT_THAT(table.rows[0].high, agrees(6, 1e-15));
  EXPECT_THAT(table.rows[1].high, agrees(24, 1e-15));
}

TEST(ClassTableFrom, LeavesNoGapBetweenWholePerCents) {
  const std::vector<Cell> cells{words("full"), number(60), number(100), //
                                words("half"), number(30), number(59),  //
                                words("low"),  number(0),  number(29)};
  const auto table = value_of(class_table_from(cells, 3, default_fill_classes()));
  EXPECT_EQ(table.rows[value_of(classify(table, 29.9, Unit::percent))].label, "low");
  EXPECT_EQ(table.rows[value_of(classify(table, 30, Unit::percent))].label, "half");
  EXPECT_EQ(table.rows[value_of(classify(table, 100, Unit::percent))].label, "full");
}

TEST(ClassTableFrom, GivesTheDefaultTablesBack) {
  for (const ClassTable* table : {&default_depth_classes(), &default_fill_classes()}) {
    std::vector<Cell> cells;
    for (const auto& [label, low, high] : table->rows) {
      cells.push_back(words(label.c_str()));
      cells.push_back(number(low));
      cells.push_back(high == inf ? Cell{} : number(high));
    }
    const auto again = value_of(class_table_from(cells, 3, *table));
    ASSERT_EQ(again.rows.size(), table->rows.size());
    for (std::size_t i = 0; i < table->rows.size(); ++i) {
      EXPECT_EQ(again.rows[i].label, table->rows[i].label);
      EXPECT_EQ(again.rows[i].low, table->rows[i].low);
      EXPECT_EQ(again.rows[i].high, table->rows[i].high);
    }
  }
}

TEST(ClassTableFrom, RefusesInWords) {
  const struct {
    std::vector<Cell> cells;
    ProblemKind kind;
    const char* words;
  } cases[] = {
      {{}, ProblemKind::not_enough, "no class"},
      {{words("a"), {}, {}}, ProblemKind::not_enough, "no class"},
      {{words("a"), number(0), number(6), words("b"), number(7), number(12)},
       ProblemKind::bad_argument,
       "between 6 and 7"},
      {{words("a"), number(0), number(6), words("b"), number(5), number(12)},
       ProblemKind::bad_argument,
       "\"a\" and \"b\" overlap"},
      {{words("a"), number(3), number(3), words("b"), number(3), number(3)},
       ProblemKind::bad_argument,
       "\"a\" and \"b\" overlap"},
      {{words("a"), number(9), number(6)}, ProblemKind::bad_argument, "runs from 9 down to 6"},
      {{words("a"), number(0), number(6), words("A"), number(6), number(9)},
       ProblemKind::bad_argument,
       "\"A\" stands twice"},
      {{{}, number(0), number(6)}, ProblemKind::bad_argument, "Row 1 of the depth classes has no label"},
      {{words("a"), number(0), words("six")}, ProblemKind::bad_argument, "\"six\" of the class \"a\""},
      {{words("a"), number(0), Cell::of_error("#N/A")}, ProblemKind::bad_argument, "of the class \"a\""},
      {{words("a"), number(0), number(6), words("b"), {}, {}, words("c"), {}, {}},
       ProblemKind::bad_argument,
       "\"b\" and \"c\" have no limits"},
  };
  for (const auto& [cells, kind, expected] : cases) {
    const auto refused = class_table_from(cells, 3, default_depth_classes());
    ASSERT_FALSE(refused) << expected;
    EXPECT_EQ(refused.error().kind, kind) << expected;
    EXPECT_THAT(refused.error().text, HasSubstr(expected));
  }
  const std::vector<Cell> two{words("a"), number(1)};
  EXPECT_EQ(class_table_from(two, 2, default_depth_classes()).error().kind, ProblemKind::bad_argument);
  EXPECT_EQ(class_table_from(two, 3, default_depth_classes()).error().kind, ProblemKind::bad_argument);
}

} // namespace
} // namespace wetspell
