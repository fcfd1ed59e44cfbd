#include "quantity/marks.hpp"

#include "quantity/amount.hpp"
#include "quantity/fold.hpp"

#include <cstddef>
#include <optional>

namespace wetspell {

namespace {

/// A sign that says about, over or under.
bool take_sign(Cursor& c, Marks& marks, Kind kind) {
  const char ch = c.peek();
  if (ch == '~' || ch == '?' || ch == sign::plus_minus)
    marks.about = true;
  else if (ch == '>' || ch == sign::at_least)
    marks.over = true;
  else if (ch == '<' || ch == sign::at_most)
    marks.under = true;
  else if (ch == '+' && c.next() == '/' && c.at[2] == '-') {
    marks.about = true;
    c.at += 2;
  } else if (ch == '+' && kind != Kind::temperature && number_ahead({c.at + 1}))
    marks.trouble = Reason::plus_before_number;
  else if (ch != '+' || !number_ahead({c.at + 1}))
    return false;
  ++c.at;
  if (ch == '>' || ch == '<')
    c.skip('=');
  return true;
}

} // namespace

Marks read_before(Cursor& c, Kind kind) {
  Marks marks;
  while (!c.done() && !amount_ahead(c)) {
    if (c.skip(' ') || take_sign(c, marks, kind))
      continue;
    std::optional<Around> around;
    for (std::size_t count = 3; count > 0 && !around; --count)
      if (const auto words = c.words(count); !words.empty() && (around = word_before(words)))
        c.at += words.size();
    if (!around)
      break;
    marks.take(*around);
  }
  return marks;
}

Joint read_joint(Cursor& c, const Marks& marks) {
  Cursor ahead = c;
  ahead.skip_space();
  Joint joined = Joint::none;
  if (ahead.skip("+/-") || ahead.skip("+-") || ahead.skip(sign::plus_minus))
    joined = Joint::plus_minus;
  else if (ahead.skip("to") || ahead.skip("or") || (marks.between && ahead.skip("and")))
    joined = is_letter(ahead.peek()) ? Joint::none : Joint::range;
  else if (ahead.skip("...") || ahead.skip('-'))
    joined = Joint::range;
  ahead.skip_space();
  if (joined == Joint::none || !amount_ahead(ahead))
    return Joint::none;
  c = ahead;
  return joined;
}

bool take_after(Cursor& c, Marks& marks, Kind kind) {
  if (c.peek() == '?' || c.peek() == '~') {
    marks.about = true;
    ++c.at;
    return true;
  }
  if (c.peek() == '+' && !number_ahead({c.at + 1}) && c.next() != '-' && c.next() != '/') {
    marks.over = true;
    ++c.at;
    return true;
  }
  const bool bracket = c.peek() == '(';
  Cursor ahead{c.at + (bracket ? 1 : 0)};
  if (bracket && ahead.skip("?)")) {
    marks.about = true;
    c = ahead;
    return true;
  }
  if (ahead.peek() == '-')
    ++ahead.at; // 25-ish
  for (std::size_t count = 3; count > 0; --count) {
    const auto words = ahead.words(count);
    const auto around = words.empty() ? std::nullopt : word_after(words, kind);
    if (!around)
      continue;
    ahead.at += words.size();
    if (bracket && !ahead.skip(')'))
      return false;
    marks.take(*around);
    c = ahead;
    return true;
  }
  return false;
}

bool skip_about(Cursor& c) {
  bool about = false;
  for (;;) {
    c.skip_space();
    if (c.skip('~') || c.skip('?')) {
      about = true;
      continue;
    }
    const auto word = c.word();
    if (word.empty() || word_before(word) != Around::about)
      return about;
    c.at += word.size();
    about = true;
  }
}

bool skip_doubt(Cursor& c, bool& about) {
  Marks marks;
  while (!c.done())
    if (!c.skip(' ') && !take_after(c, marks, Kind::date))
      return false;
  about = about || marks.about;
  return !marks.over && !marks.under;
}

} // namespace wetspell
