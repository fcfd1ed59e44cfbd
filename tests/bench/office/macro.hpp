// A Basic module of our own in a running office, and calls of its procedures.
#pragma once

#include "driver/office.hpp"

#include <com/sun/star/uno/Any.hxx>

#include <string>
#include <vector>

namespace wetspell::bench {

/// Puts the source into the profile's macros, where macros need no leave.
class Macro {
public:
  Macro(driver::Office& office, const std::string& source);
  css::uno::Any call(const std::string& procedure, const std::vector<css::uno::Any>& arguments) const;

private:
  driver::Office& office_;
};

} // namespace wetspell::bench
