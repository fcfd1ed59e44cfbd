// People: how far two of them agree on one pool on one day, who drifts, and whose paces are long or short.
#include "estimate/agreement.hpp"
#include "estimate/pairs.hpp"
#include "estimate/say_figure.hpp"
#include "estimate/summary.hpp"
#include "measure/statistics.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <map>

namespace wetspell {

namespace {

enum Entry : std::size_t {
  depth_scatter,
  depth_difference,
  depth_limits,
  depth_drift,
  depth_class_same,
  depth_class_kappa,
  temperature_scatter,
  temperature_difference,
  temperature_limits,
  temperature_drift,
  fill_class_same,
  fill_class_kappa,
  lines_apart,
  counts_apart,
  paces_against_tape
};

constexpr std::string_view altman = "Bland and Altman 1986";
constexpr std::string_view cohen = "Cohen 1968; Fleiss, Cohen and Everitt 1969";
constexpr std::string_view least_squares = "least squares, Student's t";

constexpr std::array<FigureSpec, 15> catalogue{{
    {"depth-scatter", "Scatter of a depth", Figured::depth,
     "Standard deviation of one person's depth of a pool on a day, from pairs of different people, with its "
     "chi-squared interval. n: pairs.",
     "Bland and Altman 1996 (within-pair standard deviation)"},
    {"depth-difference", "Difference of depths", Figured::depth,
     "Mean of the first person's depth less the second's, with Student's interval. n: pairs.", altman},
    {"depth-limits", "Depths differ from and to", Figured::depth,
     "Limits of agreement, between which nineteen in twenty new differences are to be expected (for 95 per "
     "cent): mean difference minus and plus Student's t times the standard deviation times √(1 + 1/n), which "
     "is 1.96 standard deviations for many pairs. n: pairs.",
     altman},
    {"depth-drift", "Drift in depths", Figured::depth,
     "How much one person's depths moved against those of others from the first to the last day on which "
     "both "
     "read one pool, along a straight line. n: pairs.",
     least_squares},
    {"depth-class-same", "Same depth class", Figured::share,
     "Share of the pairs whose depths fall into the same class. n: pairs.", "per cent agreement"},
    {"depth-class-kappa", "Agreement on depth classes", Figured::number,
     "Kappa with quadratic weights: agreement beyond what chance would give, a class further away counting "
     "more; 1 is full. It falls when nearly all pools are in one class. n: pairs.",
     cohen},
    {"temperature-scatter", "Scatter of a temperature", Figured::temperature_apart,
     "The same as for depths, of mean water temperatures. n: pairs.",
     "Bland and Altman 1996 (within-pair standard deviation)"},
    {"temperature-difference", "Difference of temperatures", Figured::temperature_apart,
     "Mean of the first person's mean temperature less the second's, with Student's interval. n: pairs.",
     altman},
    {"temperature-limits", "Temperatures differ from and to", Figured::temperature_apart,
     "Limits of agreement, as for depths. n: pairs.", altman},
    {"temperature-drift", "Drift in temperatures", Figured::temperature_apart,
     "How much one person's temperatures moved against those of others over the season, as for depths: a "
     "thermometer that goes off. n: pairs.",
     least_squares},
    {"fill-class-same", "Same fill class", Figured::share,
     "Share of the pairs whose judgements of how full the pool is fall into the same class. n: pairs.",
     "per cent agreement"},
    {"fill-class-kappa", "Agreement on fill classes", Figured::number,
     "Kappa with quadratic weights, as for depth classes. n: pairs.", cohen},
    {"lines-apart", "Lengths and widths apart", Figured::share,
     "Mean of the differences of two people's lengths and widths over their mean, signs left aside. n: lines "
     "that both took.",
     "relative per cent difference"},
    {"counts-apart", "Counts apart", Figured::share,
     "Mean of the differences of two people's counts of one thing over their mean, signs left aside; two "
     "counts of 0 are left out. n: pairs of counts.",
     "relative per cent difference"},
    {"paces-against-tape", "Paces against tape", Figured::share,
     "How much longer this person's paced lengths and widths are than those that somebody taped at the same "
     "pool on the same day, on the average, with Student's interval; below 0: shorter. n: lines.",
     "GUM 4.2.3"},
}};

constexpr std::size_t fewest = 5; // fewer pairs say next to nothing of two people: judgement

/// One figure of two people, or of one.
struct About {
  std::string of;
  std::vector<VisitPair> pairs;
};

class People {
public:
  People(const SummaryRun& run, SeasonSummary& summary) : run_(run), summary_(summary) {}

  void add(Figure figure, std::string of) {
    figure.of = std::move(of);
    summary_.programme.push_back({{}, {}, std::move(figure)});
  }
  [[nodiscard]] double level() const { return run_.options.level; }
  [[nodiscard]] const Season& season() const { return run_.season(); }
  [[nodiscard]] const SeasonHistory& history() const { return run_.history; }
  [[nodiscard]] const std::string& code(std::int32_t person) const {
    return season().people[static_cast<std::size_t>(person)].code;
  }
  [[nodiscard]] std::string pair_of(std::int32_t one, std::int32_t other) const {
    return fmt::format("{} and {}", code(one), code(other));
  }

private:
  const SummaryRun& run_;
  SeasonSummary& summary_;
};

/// A value with an interval, or too few, or why not.
Figure spanned(Entry entry, std::optional<double> value, const Interval& interval, std::size_t n,
               double level) {
  Figure figure = cannot_say(catalogue[entry], {}, n);
  figure.value = value;
  figure.low = interval.low;
  figure.high = interval.high;
  figure.level = level;
  return figure;
}

Figure few(Entry entry, std::size_t n) {
  return cannot_say(catalogue[entry], too_few(n, "pair", "pairs"), n);
}

/// The two people's readings of one kind, from the pairs in which both took it.
struct Paired {
  std::vector<double> first, second, days, apart;
};

Paired paired(const std::vector<VisitPair>& pairs, std::optional<Measured> CountedVisit::*reading) {
  Paired all;
  for (const VisitPair& pair : pairs) {
    const auto& one = pair.first->*reading;
    const auto& other = pair.second->*reading;
    if (!one || !other)
      continue;
    all.first.push_back(one->value);
    all.second.push_back(other->value);
    all.days.push_back(pair.day);
    all.apart.push_back(one->value - other->value);
  }
  return all;
}

/// Readings in numbers: depths, temperatures.
struct Numbers {
  std::optional<Measured> CountedVisit::*reading;
  Entry scatter, difference, limits, drift;
};
constexpr std::array numbers{
    Numbers{&CountedVisit::depth, depth_scatter, depth_difference, depth_limits, depth_drift},
    Numbers{&CountedVisit::temperature, temperature_scatter, temperature_difference, temperature_limits,
            temperature_drift}};

void say_numbers(People& people, const About& about, const Numbers& kind) {
  const Paired all = paired(about.pairs, kind.reading);
  const std::size_t n = all.apart.size();
  if (n == 0)
    return;
  if (about.of.empty()) { // of all people together who is first says nothing
    const auto found = scatter_within_pairs(all.apart, people.level());
    people.add(n < fewest || !found ? few(kind.scatter, n)
                                    : spanned(kind.scatter, found.value().deviation, found.value().interval,
                                              n, people.level()),
               {});
    return;
  }
  const auto found = differences(all.first, all.second, people.level());
  if (n < fewest || !found) {
    if (kind.difference == depth_difference) // once for two people is enough
      people.add(few(kind.difference, n), about.of);
    return;
  }
  people.add(spanned(kind.difference, found.value().mean, found.value().mean_interval, n, people.level()),
             about.of);
  people.add(spanned(kind.limits, {}, found.value().next, n, people.level()), about.of);
}

/// Readings in classes.
struct Classes {
  std::optional<Measured> CountedVisit::*reading;
  ClassTable Season::*table;
  Unit unit;
  Entry same, kappa;
};
constexpr std::array classes{
    Classes{&CountedVisit::depth, &Season::depth_classes, Unit::metre, depth_class_same, depth_class_kappa},
    Classes{&CountedVisit::fill, &Season::fill_classes, Unit::one, fill_class_same, fill_class_kappa}};

void say_classes(People& people, const About& about, const Classes& kind) {
  const ClassTable& table = people.season().*kind.table;
  const std::size_t k = table.rows.size();
  std::vector<double> counts(k * k);
  std::size_t n = 0, same = 0;
  const Paired all = paired(about.pairs, kind.reading);
  for (std::size_t i = 0; i < all.first.size(); ++i) {
    const auto one = classify(table, all.first[i], kind.unit);
    const auto other = classify(table, all.second[i], kind.unit);
    if (!one || !other)
      continue;
    ++n;
    same += one.value() == other.value();
    ++counts[one.value() * k + other.value()];
  }
  if (n == 0)
    return;
  if (n < fewest) {
    if (about.of.empty())
      people.add(few(kind.same, n), {});
    return;
  }
  people.add(plain_figure(catalogue[kind.same], static_cast<double>(same) / static_cast<double>(n), n),
             about.of);
  const auto found = kappa(counts, k, KappaWeights::quadratic, people.level());
  people.add(found ? spanned(kind.kappa, found.value().kappa, found.value().interval, n, people.level())
                   : cannot_say(catalogue[kind.kappa], found.error().text, n),
             about.of);
}

/// The mean of some shares with Student's interval.
Figure mean_figure(Entry entry, const std::vector<double>& shares, double level) {
  if (shares.size() < fewest)
    return few(entry, shares.size());
  const auto all = moments(shares);
  const auto half = all ? mean_half_width(all.value(), level) : Result<double>(all.error());
  if (!half)
    return cannot_say(catalogue[entry], half.error().text, shares.size());
  const double mean = all.value().mean;
  return spanned(entry, mean, {mean - half.value(), mean + half.value()}, shares.size(), level);
}

void say_lines(People& people, const About& about) {
  std::vector<double> shares;
  for (const auto reading : {&CountedVisit::length, &CountedVisit::width}) {
    const Paired all = paired(about.pairs, reading);
    for (std::size_t i = 0; i < all.first.size(); ++i)
      if (const auto apart = relative_difference(all.first[i], all.second[i]))
        shares.push_back(apart.value());
  }
  if (!shares.empty() && (shares.size() >= fewest || about.of.empty()))
    people.add(mean_figure(lines_apart, shares, people.level()), about.of);
}

/// Each person's readings against everybody else's, over the days.
void say_drift(People& people, const std::vector<VisitPair>& pairs, const Numbers& kind) {
  struct Course {
    std::vector<double> days, apart;
  };
  std::map<std::int32_t, Course> all;
  for (const VisitPair& pair : pairs) {
    const auto& one = pair.first->*kind.reading;
    const auto& other = pair.second->*kind.reading;
    if (!one || !other)
      continue;
    const double apart = one->value - other->value;
    for (const auto& [person, here] :
         {std::pair{pair.first_person, apart}, std::pair{pair.second_person, -apart}}) {
      all[person].days.push_back(pair.day);
      all[person].apart.push_back(here);
    }
  }
  std::size_t most = 0;
  for (const auto& [person, course] : all) {
    const std::size_t n = course.days.size();
    most = std::max(most, n);
    const auto found = drift(course.days, course.apart, people.level());
    if (n >= fewest)
      people.add(found ? spanned(kind.drift, found.value().change, found.value().interval, n, people.level())
                       : cannot_say(catalogue[kind.drift], found.error().text, n),
                 people.code(person));
  }
  if (most > 0 && most < fewest)
    people.add(few(kind.drift, most), {});
}

/// Paced lines against taped ones of the same pool and day.
void say_paces(People& people, const std::vector<VisitPair>& pairs) {
  std::map<std::int32_t, std::vector<double>> longer;
  const auto visit_of = [&](const CountedVisit& counted) -> const Visit& {
    return people.season().visits[counted.visit];
  };
  for (const VisitPair& pair : pairs)
    for (const auto& [paced, taped] :
         {std::pair{pair.first, pair.second}, std::pair{pair.second, pair.first}}) {
      const Ref who = pacer(visit_of(*paced));
      if (!who.known() || !visit_of(*paced).size_tool.is(SizeTool::paces) ||
          !visit_of(*taped).size_tool.is(SizeTool::tape))
        continue;
      for (const auto reading : {&CountedVisit::length, &CountedVisit::width})
        if (paced->*reading && taped->*reading && (taped->*reading)->value > 0)
          longer[who.index].push_back((paced->*reading)->value / (taped->*reading)->value - 1);
    }
  for (const auto& [person, shares] : longer)
    people.add(mean_figure(paces_against_tape, shares, people.level()), people.code(person));
}

void say_counts(People& people) {
  std::map<std::pair<std::int32_t, std::int32_t>, std::vector<double>> apart;
  for (const PoolHistory& pool : people.history().pools)
    for (const CountedLife& life : pool.life) {
      const LifeCount& row = people.season().life[life.life];
      if (!life.by_first || !life.by_second || !row.person.known() || !row.second_person.known())
        continue;
      if (const auto share = relative_difference(*life.by_first, *life.by_second))
        apart[std::minmax(row.person.index, row.second_person.index)].push_back(share.value());
    }
  std::vector<double> all;
  for (const auto& [pair, shares] : apart)
    all.insert(all.end(), shares.begin(), shares.end());
  if (!all.empty())
    people.add(mean_figure(counts_apart, all, people.level()), {});
  for (const auto& [pair, shares] : apart)
    people.add(mean_figure(counts_apart, shares, people.level()), people.pair_of(pair.first, pair.second));
}

void of_programme(const SummaryRun& run, SeasonSummary& summary) {
  People people(run, summary);
  const std::vector<VisitPair> pairs = visit_pairs(run.history);
  if (pairs.empty())
    people.add(cannot_say(catalogue[depth_scatter], "no pool was visited by two people on one day"), {});
  std::vector<About> all{{{}, pairs}};
  std::map<std::pair<std::int32_t, std::int32_t>, std::size_t> known;
  for (const VisitPair& pair : pairs) {
    const auto [at, fresh] = known.try_emplace({pair.first_person, pair.second_person}, all.size());
    if (fresh)
      all.push_back({people.pair_of(pair.first_person, pair.second_person), {}});
    all[at->second].pairs.push_back(pair);
  }
  for (const About& about : all) {
    for (const Numbers& kind : numbers)
      say_numbers(people, about, kind);
    for (const Classes& kind : classes)
      say_classes(people, about, kind);
    say_lines(people, about);
  }
  for (const Numbers& kind : numbers)
    say_drift(people, pairs, kind);
  say_paces(people, pairs);
  say_counts(people);
}

} // namespace

SummaryTopic observer_topic() {
  return {catalogue, nullptr, of_programme};
}

} // namespace wetspell
