#pragma once
// What goes wrong outside: the office does not start, a file cannot be opened, a call is refused.

#include "base/css.hpp"

#include <com/sun/star/uno/Any.hxx>

#include <stdexcept>
#include <string>

namespace wetspell::driver {

/// An error in words, for the person who ran the program.
class Failure : public std::runtime_error {
public:
  using std::runtime_error::runtime_error;
};

/// The message of an exception that the office handed over, with the messages of the ones it wraps.
std::string wordsOf(const css::uno::Any& exception);

/// The same for the exception being handled now; to be called in a catch block.
std::string wordsOfCurrent();

} // namespace wetspell::driver
