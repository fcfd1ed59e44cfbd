#include "check/check.hpp"

#include "base/in_parts.hpp"
#include "check/marks.hpp"

#include <algorithm>
#include <array>
#include <tuple>
#include <unordered_map>

namespace wetspell {

namespace {

using Counts = std::array<std::size_t, 4>; // by Outcome

template <class Function> struct Ready {
  std::size_t rule;
  Function look;
};

/// What the rules of a list said of some rows, before it is settled which doubts are already explained.
class Said {
public:
  struct Failure {
    std::size_t rule;
    RecordAt at;
    Doubts doubts;
  };
  std::vector<Counts> counts; ///< per rule of the list
  std::vector<Failure> failures;
  std::size_t steps = 0; ///< rows looked at
  Doubts doubts;         ///< one for all calls: rules that hold cost no allocation

  template <class Function, class Call>
  void ask(const std::vector<Ready<Function>>& list, const RecordAt& at, const Call& call) {
    Counts* counted = counts.data();
    for (const Ready<Function>& one : list) {
      const Outcome outcome = call(one.look, doubts);
      ++(*counted++)[static_cast<std::size_t>(outcome)];
      if (outcome == Outcome::fails)
        keep(one.rule, at);
    }
  }

private:
  // Apart, so that the loop over rules that hold stays small.
  [[gnu::noinline]] void keep(std::size_t rule, const RecordAt& at) {
    failures.push_back({rule, at, std::move(doubts)});
    doubts.clear();
  }
};

/// One run of all rules. Identity and time come first, then everything else, each in the order: single rows,
/// rows that follow each other, the whole season.
class Run {
  // Fewer are not worth a processor of their own.
  static constexpr std::size_t rows_at_least = 1024, pools_at_least = 128;

public:
  Run(const Season& season, const CheckOptions& options)
      : season_(season), options_(options), marks_(season) {
    for (const GivenAnswer& given : options.answers)
      answers_.insert_or_assign(given.key, &given);
    // Pools and people that are only named in visits have no rows of their own.
    report_.rows_checked = (season.where(TableKind::pools).found() ? season.pools.size() : 0) +
                           (season.where(TableKind::people).found() ? season.people.size() : 0) +
                           season.visits.size() + season.life.size();
    counts_.resize(rules().size());
  }

  CheckReport report() {
    if (!told(0)) {
      const SeasonView view(season_);
      count_steps();
      stage(view, [](const RuleSpec& rule) { return rule.family == Family::identity; });
      stage(view, [](const RuleSpec& rule) { return rule.family != Family::identity; });
    }
    finish();
    return std::move(report_);
  }

private:
  template <class Chosen> void stage(const SeasonView& view, Chosen chosen) {
    singles<PoolRule>(view, chosen, TableKind::pools, season_.pools);
    singles<PersonRule>(view, chosen, TableKind::people, season_.people);
    singles<VisitRule>(view, chosen, TableKind::visits, season_.visits);
    singles<LifeRule>(view, chosen, TableKind::life, season_.life);
    following_visits(view, ready<FollowingRule>(chosen, visits_that_follow(view)));
    following_life(view, ready<FollowingLifeRule>(chosen, season_.life.size()));
    whole_season(view, ready<SeasonRule>(chosen, season_.visits.size()));
  }

  /// The chosen rules of one kind that can run; the others are counted for `rows` rows.
  template <class Function, class Chosen>
  std::vector<Ready<Function>> ready(const Chosen& chosen, std::size_t rows) {
    std::vector<Ready<Function>> list;
    for (std::size_t i = 0; i < rules().size(); ++i) {
      const RuleSpec& rule = rules()[i];
      if (!chosen(rule) || !std::holds_alternative<Function>(rule.look))
        continue;
      if (columns_missing(season_, rule).empty())
        list.push_back({i, std::get<Function>(rule.look)});
      else
        count(i, Outcome::could_not_run, rows);
    }
    return list;
  }

  template <class Function, class Chosen, class Records>
  void singles(const SeasonView& view, const Chosen& chosen, TableKind table, const Records& records) {
    const auto list = ready<Function>(chosen, records.size());
    side_by_side(list, records.size(), rows_at_least, false, [&](std::size_t i, Said& said) {
      said.ask(list, {table, static_cast<std::uint32_t>(i)},
               [&](Function look, Doubts& doubts) { return look(view, records[i], doubts); });
      ++said.steps;
    });
  }

  /// Lets a list of rules look at rows (or pools) 0 to count - 1, on all processors, and settles what they
  /// said in the order of the rows. Gives the steps that were made.
  template <class Function, class Look>
  std::size_t side_by_side(const std::vector<Ready<Function>>& list, std::size_t count, std::size_t least,
                           bool own_marks_too, const Look& look) {
    constexpr std::size_t at_once = 1 << 12; // then it is told how far the run is
    std::size_t steps = 0;
    for (std::size_t from = 0; from < count && !report_.cancelled; from += at_once) {
      const std::size_t rows = std::min(at_once, count - from);
      std::vector<Said> parts(parts_of(rows, least));
      in_parts(parts.size(), [&](std::size_t part) {
        Said said; // not among its neighbours: processors would wait for each other
        said.counts.resize(list.size());
        const auto [first, end] = range_of(part, parts.size(), rows);
        for (std::size_t i = first; i < end; ++i)
          look(from + i, said);
        parts[part] = std::move(said);
      });
      for (Said& said : parts) {
        for (std::size_t i = 0; i < list.size(); ++i)
          for (std::size_t outcome = 0; outcome < said.counts[i].size(); ++outcome)
            counts_[list[i].rule][outcome] += said.counts[i][outcome];
        for (Said::Failure& failure : said.failures)
          settle(failure.rule, failure.at, failure.doubts, own_marks_too);
        step(said.steps);
        steps += said.steps;
      }
    }
    return steps;
  }

  /// Visits of a known pool and day that are not that pool's first.
  static std::size_t visits_that_follow(const SeasonView& view) {
    return static_cast<std::size_t>(
        std::count_if(view.place_in_pool.begin(), view.place_in_pool.end(),
                      [](std::uint32_t place) { return place != 0 && place != SeasonView::nowhere; }));
  }

  void following_visits(const SeasonView& view, const std::vector<Ready<FollowingRule>>& list) {
    if (list.empty())
      return;
    side_by_side(list, view.pool_visits.size(), pools_at_least, true, [&](std::size_t pool, Said& said) {
      const auto& visits = view.pool_visits[pool];
      for (std::size_t i = 1; i < visits.size(); ++i) {
        const Visit& before = view.visit(visits[i - 1]);
        const Visit& now = view.visit(visits[i]);
        said.ask(list, {TableKind::visits, visits[i]},
                 [&](FollowingRule look, Doubts& doubts) { return look(view, before, now, doubts); });
      }
      said.steps += visits.size();
    });
    // A visit whose pool or day cannot be told follows nothing that could be named.
    for (std::uint32_t i = 0; i < season_.visits.size(); ++i)
      if (view.place_in_pool[i] == SeasonView::nowhere)
        for (const auto& one : list)
          count(one.rule, Outcome::undecided, 1);
  }

  void following_life(const SeasonView& view, const std::vector<Ready<FollowingLifeRule>>& list) {
    if (list.empty())
      return;
    const std::size_t placed =
        side_by_side(list, view.pool_life.size(), pools_at_least, true, [&](std::size_t pool, Said& said) {
          std::unordered_map<std::uint64_t, std::uint32_t> last; // species and form to its latest count
          for (const std::uint32_t i : view.pool_life[pool]) {
            const LifeCount& now = season_.life[i];
            if (!now.species.known())
              continue;
            ++said.steps;
            const std::uint64_t what = static_cast<std::uint64_t>(now.species.index) << 16 |
                                       static_cast<std::uint16_t>(now.seen_as.index);
            const auto [before, first] = last.try_emplace(what, i);
            if (first)
              continue;
            const LifeCount& then = season_.life[before->second];
            said.ask(list, {TableKind::life, i},
                     [&](FollowingLifeRule look, Doubts& doubts) { return look(view, then, now, doubts); });
            before->second = i;
          }
        });
    if (report_.cancelled)
      return;
    for (const auto& one : list)
      count(one.rule, Outcome::undecided, season_.life.size() - placed);
  }

  void whole_season(const SeasonView& view, const std::vector<Ready<SeasonRule>>& list) {
    const std::size_t at_once = parts_of(season_.visits.size(), rows_at_least);
    for (std::size_t from = 0; from < list.size() && !report_.cancelled; from += at_once) {
      std::vector<Verdicts> verdicts(std::min(at_once, list.size() - from));
      in_parts(verdicts.size(), [&](std::size_t i) { list[from + i].look(view, verdicts[i]); });
      for (std::size_t i = 0; i < verdicts.size(); ++i) {
        const std::size_t rule = list[from + i].rule;
        count(rule, Outcome::holds, verdicts[i].holding());
        count(rule, Outcome::undecided, verdicts[i].not_decided());
        for (Verdicts::Row& row : verdicts[i].failing()) {
          count(rule, Outcome::fails, 1);
          settle(rule, {TableKind::visits, row.visit}, row.doubts, false);
        }
        step(season_.visits.size());
      }
    }
  }

  void count(std::size_t rule, Outcome outcome, std::size_t rows) {
    counts_[rule][static_cast<std::size_t>(outcome)] += rows;
  }

  /// Turns what is left of the doubts into findings; a row without any left is undecided.
  void settle(std::size_t rule, RecordAt at, Doubts& doubts, bool own_marks_too) {
    std::erase_if(doubts, [&](const Doubt& doubt) { return marks_.cover(at, doubt, rule, own_marks_too); });
    if (doubts.empty()) {
      --counts_[rule][static_cast<std::size_t>(Outcome::fails)];
      ++counts_[rule][static_cast<std::size_t>(Outcome::undecided)];
    }
    for (Doubt& doubt : doubts) {
      marks_.add(at, doubt, rule, rules()[rule].level);
      add_finding(rules()[rule], at, doubt);
    }
    doubts.clear();
  }

  [[nodiscard]] Place place_of(RecordAt at, Field field) const {
    if (auto place = season_.place(field, row_of(season_, at)))
      return *place;
    // No column for the field: the row's first cell is the nearest that can be looked at.
    const Located& located = season_.where(at.table);
    return located.table->place(row_of(season_, at), 0);
  }

  void add_finding(const RuleSpec& rule, RecordAt at, Doubt& doubt) {
    const RecordAt cell_at = holder(season_, at, doubt.field).value_or(at);
    Finding finding;
    finding.rule = &rule;
    finding.table = cell_at.table;
    finding.field = doubt.field;
    finding.record = cell_at.record;
    finding.place = place_of(cell_at, doubt.field);
    finding.value = to_text(cell_of(season_, cell_at, doubt.field));
    finding.key = fingerprint(season_, rule, at, doubt);
    finding.message = std::move(doubt.message);
    finding.advice = doubt.advice.empty() ? std::string(rule.advice) : std::move(doubt.advice);
    finding.question = std::move(doubt.question);
    for (const Proposal& proposal : doubt.proposals)
      if (const auto where = holder(season_, at, proposal.field); where && season_.has(proposal.field))
        finding.changes.push_back({place_of(*where, proposal.field), proposal.content});
    if (const auto given = answers_.find(finding.key); given != answers_.end()) {
      finding.answer = given->second->answer;
      finding.note = given->second->note;
      finding.settled = choice_from(finding.answer, answer_words()).is(AnswerWord::right_as_it_is);
    }
    report_.findings.push_back(std::move(finding));
  }

  /// How many rows all loops together will pass.
  void count_steps() {
    steps_ = 2 * (season_.pools.size() + season_.people.size() + season_.visits.size() + season_.life.size());
    std::array<bool, 2> visits_follow{}, life_follows{};
    for (const RuleSpec& rule : rules()) {
      if (!columns_missing(season_, rule).empty())
        continue;
      const std::size_t stage = rule.family == Family::identity ? 0 : 1;
      visits_follow[stage] = visits_follow[stage] || std::holds_alternative<FollowingRule>(rule.look);
      life_follows[stage] = life_follows[stage] || std::holds_alternative<FollowingLifeRule>(rule.look);
      if (std::holds_alternative<SeasonRule>(rule.look))
        steps_ += season_.visits.size();
    }
    for (std::size_t stage = 0; stage < 2; ++stage)
      steps_ += (visits_follow[stage] ? season_.visits.size() : 0) +
                (life_follows[stage] ? season_.life.size() : 0);
  }

  void step(std::size_t by = 1) {
    constexpr std::size_t often = 1024;
    const std::size_t before = done_ / often;
    done_ += by;
    if (done_ / often != before)
      told(std::min(1.0, static_cast<double>(done_) / static_cast<double>(std::max<std::size_t>(steps_, 1))));
  }

  /// Tells the caller how far the run is; true when it wants to stop.
  bool told(double share) {
    if (options_.progress && !options_.progress(share))
      report_.cancelled = true;
    return report_.cancelled;
  }

  void finish() {
    for (std::size_t i = 0; i < counts_.size(); ++i) {
      const auto counted = [&](Outcome outcome) { return counts_[i][static_cast<std::size_t>(outcome)]; };
      report_.tallies.push_back({counted(Outcome::holds), counted(Outcome::fails),
                                 counted(Outcome::undecided), counted(Outcome::could_not_run)});
    }
    std::stable_sort(report_.findings.begin(), report_.findings.end(),
                     [](const Finding& a, const Finding& b) {
                       return std::tuple(a.table, a.place.row, a.rule->level) <
                              std::tuple(b.table, b.place.row, b.rule->level);
                     });
    for (const Finding& finding : report_.findings) {
      if (!finding.open())
        ++report_.answered;
      else if (finding.rule->level == Level::fix)
        ++report_.open_fix;
      else if (finding.rule->level == Level::ask)
        ++report_.open_ask;
      else
        ++report_.open_note;
    }
    if (!report_.cancelled)
      told(1);
  }

  const Season& season_;
  const CheckOptions& options_;
  Marks marks_;
  std::unordered_map<std::string_view, const GivenAnswer*> answers_;
  CheckReport report_;
  std::vector<Counts> counts_; // per rule
  std::size_t steps_ = 0, done_ = 0;
};

} // namespace

CheckReport check(const Season& season, const CheckOptions& options) {
  return Run(season, options).report();
}

std::string doubts_in_words(const SeasonView& view, std::uint32_t visit) {
  Marks marks(view.season);
  Doubts doubts;
  std::string words;
  const RecordAt at{TableKind::visits, visit};
  for (std::size_t i = 0; i < rules().size(); ++i) {
    const RuleSpec& rule = rules()[i];
    const auto* look = std::get_if<VisitRule>(&rule.look);
    if (look == nullptr || (rule.scope != Scope::reading && rule.scope != Scope::visit) ||
        !columns_missing(view.season, rule).empty())
      continue;
    doubts.clear();
    if ((*look)(view, view.visit(visit), doubts) != Outcome::fails)
      continue;
    std::erase_if(doubts, [&](const Doubt& doubt) { return marks.cover(at, doubt, i, false); });
    for (const Doubt& doubt : doubts) {
      marks.add(at, doubt, i, rule.level);
      words += words.empty() ? "" : " ";
      words += doubt.message;
    }
  }
  return words;
}

} // namespace wetspell
