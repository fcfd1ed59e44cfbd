// How many of a group have not had their event yet, when each event is only known to lie between two looks.
#pragma once

#include "base/result.hpp"
#include "estimate/between.hpp"
#include "measure/measured.hpp"

#include <cstddef>
#include <cstdint>
#include <optional>
#include <span>
#include <vector>

namespace wetspell {

/// Where the estimate puts weight: how it is spread inside `where`, the looks do not say.
struct EventMass {
  Between where;
  double weight = 0;
};

/// The nonparametric maximum likelihood estimate (Turnbull 1976), in the order of time. Where all events are
/// known to the moment or not seen at all it is the estimate of Kaplan and Meier (1958).
struct EventCurve {
  std::vector<EventMass> masses; ///< those with weight; they sum to 1
  double log_likelihood = 0;
  double gap = 0; ///< the log likelihood is at most so far below its greatest (Kuhn-Tucker conditions)
  std::size_t n = 0;
};

/// Refuses no observation at all (not_enough), one that ends before it begins or is not a number
/// (bad_argument).
///
/// Weight can only lie where an observation's beginning is followed by an observation's end without another
/// end between; on these intervals the likelihood is raised by turns of one EM step, which goes ahead safely,
/// and one step of the iterative convex minorant, which can take weight away and bring it back (Wellner and
/// Zhan 1997), until the Kuhn-Tucker conditions hold: where EM alone creeps, or stays for ever at a place
/// that reproduces itself without being the greatest, they do not.
Result<EventCurve> event_curve(std::span<const Between> observations);

/// The share whose event comes after `moment`. Inside an interval with weight the share is taken as it was
/// before: it falls at the interval's end, the latest moment by which the events have happened.
double share_after(const EventCurve& curve, double moment);

/// The interval in which the share that had its event reaches `share`.
Between event_quantile(const EventCurve& curve, double share);

/// A moment within that interval, its weight taken as spread evenly over it. Nothing when the interval is
/// open at an end, as when too few have had their event.
std::optional<double> event_quantile_within(const EventCurve& curve, double share);

struct BootstrapOptions {
  std::size_t draws = 2000;
  std::uint64_t seed = 1;
  double level = 0.95;
};

struct EventBootstrap {
  Interval quantile;          ///< infinite at an end that the draws do not bound
  std::vector<Interval> band; ///< of share_after, for each moment asked for
};

/// Percentile intervals from drawing the observations with replacement. The same seed gives the same answer
/// on every machine. Refuses as event_curve does, and a level not between 0 and 1.
Result<EventBootstrap> event_bootstrap(std::span<const Between> observations, double share,
                                       std::span<const double> moments, const BootstrapOptions& options);

} // namespace wetspell
