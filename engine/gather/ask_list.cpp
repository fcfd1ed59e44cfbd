#include "gather/ask_list.hpp"

#include "quantity/print.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <map>

namespace wetspell {

namespace {

/// Whom a finding's row names, and where and when it was.
struct Row {
  Ref person;
  std::string code; ///< as typed
  Ref pool;
  std::string pool_typed;
  const Quantity* date = nullptr;
  std::string date_typed;
};

Row row_of(const Season& season, const Finding& finding) {
  const auto typed = [&](Field field, std::uint32_t row) { return to_text(season.cell(field, row)); };
  switch (finding.table) {
  case TableKind::visits: {
    const Visit& visit = season.visits[finding.record];
    return {visit.person, typed(Field::visit_person, visit.row),
            visit.pool,   typed(Field::visit_pool, visit.row),
            &visit.date,  typed(Field::visit_date, visit.row)};
  }
  case TableKind::life: {
    const LifeCount& count = season.life[finding.record];
    return {count.person, typed(Field::life_person, count.row),
            count.pool,   typed(Field::life_pool, count.row),
            &count.date,  typed(Field::life_date, count.row)};
  }
  case TableKind::people:
    return {Ref{static_cast<std::int32_t>(finding.record)},
            season.people[finding.record].code,
            {},
            {},
            nullptr,
            {}};
  case TableKind::pools:
    return {{},      {}, Ref{static_cast<std::int32_t>(finding.record)}, season.pools[finding.record].code,
            nullptr, {}};
  default:
    return {};
  }
}

std::string pool_in(const Season& season, const Row& row) {
  return row.pool.known() ? season.pools[static_cast<std::size_t>(row.pool.index)].code : row.pool_typed;
}

std::string day_in(const Row& row) {
  return row.date != nullptr && row.date->has_value() ? print_date(std::floor(row.date->si)) : row.date_typed;
}

/// Known people by their place in the table, then codes nobody knows, last nobody.
using Order = std::pair<int, std::string>;

Order order_of(const Row& row) {
  if (row.person.known())
    return {0, fmt::format("{:09}", row.person.index)};
  return {row.code.empty() ? 2 : 1, row.code};
}

} // namespace

std::vector<AskList> ask_lists(const Season& season, const CheckReport& report) {
  std::map<Order, AskList> lists;
  for (const Finding& finding : report.findings) {
    if (!finding.open() || finding.rule->level == Level::note)
      continue;
    const Row row = row_of(season, finding);
    AskList& list = lists[order_of(row)];
    list.person = row.person;
    list.code = row.code;
    if (row.person.known()) {
      const Person& person = season.people[static_cast<std::size_t>(row.person.index)];
      list.code = person.code;
      list.name = person.name;
    }
    list.questions.push_back({finding.key, finding.rule->level, finding.place, pool_in(season, row),
                              day_in(row), std::string(spec(finding.field).heading), finding.value,
                              finding.message, std::string(finding.asked())});
  }
  std::vector<AskList> all;
  all.reserve(lists.size());
  for (auto& [order, list] : lists)
    all.push_back(std::move(list));
  return all;
}

std::span<const Question> questions_to(std::span<const AskList> lists, std::size_t person) {
  const auto found = std::find_if(lists.begin(), lists.end(), [&](const AskList& list) {
    return list.person == Ref{static_cast<std::int32_t>(person)};
  });
  return found == lists.end() ? std::span<const Question>() : std::span<const Question>(found->questions);
}

std::string ask_text(const Season& season, const AskList& list) {
  const std::string whom = list.name.empty() ? list.code : list.name;
  const std::size_t n = list.questions.size();
  std::string text =
      whom.empty() ? std::string("To whoever was there,\n\n") : fmt::format("Hello {},\n\n", whom);
  text += fmt::format(
      "thank you for your visits{}. While reading them through we came upon {} that only you can "
      "settle. Please answer below each line: either \"right as it is\", or what it should be. If you "
      "do not remember, say so; nobody has to go out again for it.\n",
      season.settings.programme.empty() ? "" : " for " + season.settings.programme,
      n == 1 ? std::string("one reading") : fmt::format("{} readings", n));
  for (std::size_t i = 0; i < n; ++i) {
    const Question& question = list.questions[i];
    std::string where;
    if (!question.pool.empty())
      where += fmt::format("Pool {}", question.pool);
    if (!question.day.empty())
      where += fmt::format("{}{}", where.empty() ? "" : ", ", question.day);
    text +=
        fmt::format("\n{}. {}{}{}: {}\n   {}\n   {}\n   Your answer:\n", i + 1, where,
                    where.empty() ? "" : ", ", question.what,
                    question.written.empty() ? "(blank)" : question.written, question.doubt, question.asked);
  }
  return text;
}

} // namespace wetspell
