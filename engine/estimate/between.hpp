// An event that happened between two looks.
#pragma once

#include <limits>

namespace wetspell {

/// After the moment `after`, by the moment `by`: (after, by]. Equal: at that very moment. Not finite where no
/// look bounds it: never seen to happen is (last look, infinity], already happened (-infinity, first look].
struct Between {
  double after = -std::numeric_limits<double>::infinity();
  double by = std::numeric_limits<double>::infinity();

  bool operator==(const Between&) const = default;
};

} // namespace wetspell
