// A rule: what must hold, how much it matters, and the function that looks.
#pragma once

#include "check/nearest.hpp"
#include "check/season_span.hpp"
#include "check/signs.hpp"
#include "season/derive.hpp"
#include "season/season.hpp"

#include <cstdint>
#include <span>
#include <string>
#include <string_view>
#include <variant>
#include <vector>

namespace wetspell {

/// What a finding asks for.
enum class Level : std::uint8_t {
  fix,  ///< cannot be right
  ask,  ///< doubtful: ask the person
  note, ///< worth knowing
};
std::string_view name(Level level);

enum class Family : std::uint8_t { identity, temperature, depth, fill, size, setting, life, among_pools };
std::string_view name(Family family); ///< "identity and time"

/// What a rule looks at.
enum class Scope : std::uint8_t { reading, visit, pool_over_time, season };
std::string_view name(Scope scope);

enum class Outcome : std::uint8_t {
  holds,
  fails,
  undecided,     ///< something it needs is blank, not measured or unreadable in this row
  could_not_run, ///< a table or column it needs is not there, or its limits make no sense
};

/// A new content for one cell of the row in question (or of the row it is compared with).
struct Proposal {
  Field field;
  Cell content;
};

/// What a rule has to say about one row.
///
/// One mistake is reported once: rules run in the order of rules(), identity and time before all others, and
/// rules about one row before those that compare rows. A cell to which an earlier rule has already pointed
/// with `fix` or `ask` is in doubt; a later doubt that points to it or rests on it (`field`, `behind`, of
/// this row or of `other_row`) is dropped and counted as undecided. So the more specific rule stands first.
///
/// Messages are one or two plain sentences with the numbers read. They are told to whoever was there as well,
/// who has never seen the season sheet: another visit is named by pool, day, person and time; its row stands
/// in the advice.
struct Doubt {
  Field field;                            ///< the cell to look at
  std::string message;                    ///< what was read and what makes it doubtful, with both numbers
  std::string advice;                     ///< what to do; empty: the rule's own advice
  std::vector<Proposal> proposals;        ///< what could be written instead; empty: nothing can be worked out
  std::vector<Field> behind;              ///< further fields of the row whose values the doubt rests on
  std::optional<std::uint32_t> other_row; ///< the earlier visit (or twin row) it is compared with
  std::string question = {};              ///< to whoever was there; empty: the rule's own question
};

using Doubts = std::vector<Doubt>;

/// What is compared from pool to pool, of one visit; in SI, not a number where it is not known. Apart from
/// the records because these are looked at pool by pool, and records are wide.
struct Compared {
  double day, depth, fill, temperature;
};

/// Visits with a known pool, day and person: those of one pool on one day, where there are several.
struct SharedDays {
  std::vector<std::vector<std::uint32_t>> visits; ///< day by day, in time order
  std::size_t looked_at = 0;                      ///< how many such visits there are, lone ones too
};

/// Everything about the season that more than one rule needs, worked out once.
struct SeasonView {
  const Season& season;
  FixedArray<DerivedVisit> derived; ///< per visit
  std::vector<std::vector<std::uint32_t>>
      pool_visits; ///< per pool: visits with a readable date, in time order
  std::vector<std::vector<std::uint32_t>>
      pool_life; ///< per pool: life counts with a readable date, in time order
  std::vector<std::vector<std::uint32_t>>
      person_visits; ///< per person: visits with a readable date, in time order

  SharedDays shared_days;

  static constexpr std::uint32_t nowhere = 0xFFFFFFFF;
  FixedArray<Signs> signs;       ///< per visit
  FixedArray<Compared> compared; ///< per visit

  std::vector<std::uint32_t> pool_twin, person_twin; ///< another row with the same code, or nowhere
  NearestWord pool_codes, person_codes;              ///< person: code 2i, name 2i + 1
  std::vector<std::uint32_t> place_in_pool;          ///< per visit: its place in its pool's list, or nowhere

  std::optional<SeasonSpan> span; ///< when the season is, if its settings say

  explicit SeasonView(const Season& s);
  [[nodiscard]] const Visit& visit(std::uint32_t index) const { return season.visits[index]; }
  /// Index of a record that is an element of its vector of the season.
  [[nodiscard]] std::uint32_t index(const Visit& visit) const {
    return static_cast<std::uint32_t>(&visit - season.visits.data());
  }
  /// The pool's visit before or after this one in time; null when there is none.
  [[nodiscard]] const Visit* before(const Visit& visit) const;
  [[nodiscard]] const Visit* after(const Visit& visit) const;
  [[nodiscard]] const DerivedVisit& derived_of(const Visit& visit) const { return derived[index(visit)]; }
  [[nodiscard]] Signs signs_of(const Visit& visit) const { return signs[index(visit)]; }
};

// A rule's function returns what it found; when that is `fails` it has added at least one Doubt.
using PoolRule = Outcome (*)(const SeasonView&, const Pool&, Doubts&);
using PersonRule = Outcome (*)(const SeasonView&, const Person&, Doubts&);
using VisitRule = Outcome (*)(const SeasonView&, const Visit&, Doubts&);
/// Two visits of one pool that follow each other; doubts are about the later one.
using FollowingRule = Outcome (*)(const SeasonView&, const Visit& before, const Visit& now, Doubts&);
using LifeRule = Outcome (*)(const SeasonView&, const LifeCount&, Doubts&);
/// Two counts of the same species and form in one pool that follow each other.
using FollowingLifeRule = Outcome (*)(const SeasonView&, const LifeCount& before, const LifeCount& now,
                                      Doubts&);

/// What a rule over the whole season says: one verdict for every visit it looks at. Rows without a doubt are
/// only counted, since a season holds many of them.
class Verdicts {
public:
  struct Row {
    std::uint32_t visit = 0; ///< index into Season::visits
    Doubts doubts;
  };

  void holds(std::size_t rows = 1) { holds_ += rows; }
  void undecided(std::size_t rows = 1) { undecided_ += rows; }
  void fails(std::uint32_t visit, Doubt doubt) { fails_.push_back({visit, {std::move(doubt)}}); }

  [[nodiscard]] std::size_t holding() const { return holds_; }
  [[nodiscard]] std::size_t not_decided() const { return undecided_; }
  [[nodiscard]] std::vector<Row>& failing() { return fails_; }

private:
  std::size_t holds_ = 0, undecided_ = 0;
  std::vector<Row> fails_;
};
using SeasonRule = void (*)(const SeasonView&, Verdicts&);

using RuleFunction =
    std::variant<PoolRule, PersonRule, VisitRule, FollowingRule, LifeRule, FollowingLifeRule, SeasonRule>;

struct RuleSpec {
  std::string_view name; ///< stable, our own words: "dry-yet-deep"
  Family family;
  Level level;
  Scope scope;
  std::string_view expectation; ///< "A pool without standing water has no depth"
  std::string_view advice;   ///< to the coordinator: "Ask whether the water or the depth was written in ..."
  std::string_view question; ///< to whoever was there: "Was there water in the pool?"
  std::string_view source;   ///< published source, or "common practice, no source"
  std::vector<Field> needs;  ///< columns without which it cannot run
  RuleFunction look;
  std::vector<Field> needs_one_of = {}; ///< of these one column is enough, where there are any
};

/// The columns that the rule needs and the season has not; where one of several would be enough, the first.
/// Without a season's columns the rule cannot run.
std::vector<Field> columns_missing(const Season& season, const RuleSpec& rule);

/// All rules, family by family. Each family stands in one file: check/<family>_rules.cpp.
std::span<const RuleSpec> rules();
const RuleSpec* rule_named(std::string_view name);

// One list a family (joined by rules()).
std::span<const RuleSpec> identity_rules();
std::span<const RuleSpec> temperature_rules();
std::span<const RuleSpec> depth_rules();
std::span<const RuleSpec> fill_rules();
std::span<const RuleSpec> size_rules();
std::span<const RuleSpec> setting_rules();
std::span<const RuleSpec> life_rules();
std::span<const RuleSpec> among_pools_rules();

} // namespace wetspell
