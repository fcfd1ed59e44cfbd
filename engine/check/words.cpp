#include "check/rule.hpp"

namespace wetspell {

std::string_view name(Level level) {
  switch (level) {
  case Level::fix:
    return "fix";
  case Level::ask:
    return "ask";
  case Level::note:
    return "note";
  }
  return {};
}

std::string_view name(Family family) {
  switch (family) {
  case Family::identity:
    return "identity and time";
  case Family::temperature:
    return "temperature";
  case Family::depth:
    return "depth";
  case Family::fill:
    return "fill";
  case Family::size:
    return "size";
  case Family::setting:
    return "setting";
  case Family::life:
    return "life";
  case Family::among_pools:
    return "among pools";
  }
  return {};
}

std::string_view name(Scope scope) {
  switch (scope) {
  case Scope::reading:
    return "one reading";
  case Scope::visit:
    return "one row";
  case Scope::pool_over_time:
    return "a pool over time";
  case Scope::season:
    return "the whole season";
  }
  return {};
}

} // namespace wetspell
