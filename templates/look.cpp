#include "look.hpp"

#include <array>

namespace wetspell::workbook {
namespace {

using namespace colour;
using N = NumberLook;
using A = Across;
using B = Border;

constexpr bool bold = true, thin = false, italic = true, upright = false, wrap = true, one_line = false;

constexpr std::array look_table{
    LookSpec{Look::page, "Pool-page", ink, "", 10, thin, upright, one_line, A::automatic, B::none,
             N::general},
    LookSpec{Look::title, "Pool-title", deep_water, "", 22, bold, upright, one_line, A::left, B::none,
             N::general},
    LookSpec{Look::subtitle, "Pool-subtitle", quiet_ink, "", 11, thin, upright, one_line, A::left, B::none,
             N::general},
    LookSpec{Look::explanation, "Pool-explanation", ink, "", 10, thin, upright, wrap, A::left, B::none,
             N::general},
    LookSpec{Look::small_print, "Pool-small-print", quiet_ink, "", 8.5, thin, upright, wrap, A::left, B::none,
             N::general},
    LookSpec{Look::version_here, "Pool-version", quiet_ink, "", 8.5, thin, upright, wrap, A::left, B::none,
             N::version},
    LookSpec{Look::rows_in_use, "Pool-rows-in-use", quiet_ink, "", 8.5, thin, upright, one_line, A::left,
             B::none, N::rows},
    LookSpec{Look::section, "Pool-section", deep_water, "", 13, bold, upright, one_line, A::left, B::below,
             N::general},
    LookSpec{Look::step, "Pool-step", deep_water, shore, 11, bold, upright, wrap, A::left, B::none,
             N::general},
    LookSpec{Look::step_text, "Pool-step-text", ink, shore, 10, thin, upright, wrap, A::left, B::none,
             N::general},
    LookSpec{Look::legend_label, "Pool-legend", quiet_ink, "", 9, bold, upright, wrap, A::left, B::none,
             N::general},
    LookSpec{Look::link, "Pool-link", ink, "", 9, thin, upright, one_line, A::left, B::none, N::general},
    LookSpec{Look::banner, "Pool-banner", ink, mist, 10.5, bold, upright, wrap, A::left, B::left_bar,
             N::general},
    LookSpec{Look::banner_good, "Pool-banner-good", moss, moss_pale, 10.5, bold, upright, wrap, A::left,
             B::left_bar, N::general},
    LookSpec{Look::banner_bad, "Pool-banner-bad", brick, brick_pale, 10.5, bold, upright, wrap, A::left,
             B::left_bar, N::general},
    LookSpec{Look::caution, "Pool-caution", ink, lantern, 9.5, thin, upright, wrap, A::left, B::none,
             N::general},
    LookSpec{Look::caution_head, "Pool-caution-heading", amber, lantern_bright, 11, bold, upright, one_line,
             A::left, B::none, N::general},
    LookSpec{Look::band_typed, "Pool-band-typed", deep_water, mist, 8.5, bold, upright, one_line, A::left,
             B::none, N::general},
    LookSpec{Look::band_derived, "Pool-band-worked-out", quiet_ink, shore, 8.5, bold, italic, one_line,
             A::left, B::none, N::general},
    LookSpec{Look::band_check, "Pool-band-check", amber, lantern_bright, 8.5, bold, upright, one_line,
             A::left, B::none, N::general},
    LookSpec{Look::head_typed, "Pool-heading-typed", paper, deep_water, 9.5, bold, upright, wrap, A::left,
             B::none, N::general},
    LookSpec{Look::head_derived, "Pool-heading-worked-out", paper, quiet_ink, 9.5, bold, italic, wrap,
             A::left, B::none, N::general},
    LookSpec{Look::head_check, "Pool-heading-check", paper, amber, 9.5, bold, upright, wrap, A::left, B::none,
             N::general},
    LookSpec{Look::typed_text, "Pool-typed-text", ink, paper, 10, thin, upright, one_line, A::left, B::box,
             N::general},
    LookSpec{Look::typed_code, "Pool-typed-code", ink, paper, 10, thin, upright, one_line, A::left, B::box,
             N::text},
    LookSpec{Look::typed_wrapped, "Pool-typed-long-text", ink, paper, 10, thin, upright, wrap, A::left,
             B::box, N::general},
    LookSpec{Look::typed_number, "Pool-typed-number", ink, paper, 10, thin, upright, one_line, A::right,
             B::box, N::general},
    LookSpec{Look::typed_date, "Pool-typed-date", ink, paper, 10, thin, upright, one_line, A::middle, B::box,
             N::date},
    LookSpec{Look::typed_time, "Pool-typed-time", ink, paper, 10, thin, upright, one_line, A::middle, B::box,
             N::time},
    LookSpec{Look::setting_label, "Pool-setting", ink, "", 10, bold, upright, wrap, A::left, B::below,
             N::general},
    LookSpec{Look::setting_date, "Pool-setting-date", ink, paper, 10, thin, upright, one_line, A::left,
             B::box, N::date},
    LookSpec{Look::setting_help, "Pool-setting-help", quiet_ink, "", 9, thin, upright, wrap, A::left,
             B::below, N::general},
    LookSpec{Look::in_use, "Pool-in-use", deep_water, shore, 10, bold, italic, one_line, A::middle, B::below,
             N::general},
    LookSpec{Look::in_use_date, "Pool-in-use-date", deep_water, shore, 9, bold, italic, one_line, A::middle,
             B::below, N::date},
    LookSpec{Look::derived_text, "Pool-worked-out-text", deep_water, shore, 10, thin, italic, one_line,
             A::left, B::box, N::general},
    LookSpec{Look::derived_number, "Pool-worked-out-number", deep_water, shore, 10, thin, italic, one_line,
             A::right, B::box, N::one_decimal},
    LookSpec{Look::derived_fine, "Pool-worked-out-fine-number", deep_water, shore, 10, thin, italic, one_line,
             A::right, B::box, N::two_decimals},
    LookSpec{Look::derived_whole, "Pool-worked-out-whole-number", deep_water, shore, 10, thin, italic,
             one_line, A::right, B::box, N::whole},
    LookSpec{Look::check_text, "Pool-check-text", amber, lantern, 9.5, thin, upright, wrap, A::left, B::box,
             N::general},
    LookSpec{Look::check_flag, "Pool-check-mark", amber, lantern, 9.5, thin, upright, one_line, A::left,
             B::box, N::general},
    LookSpec{Look::doubtful, "Pool-check-doubtful", ink, lantern_bright, 9.5, bold, upright, wrap, A::left,
             B::box, N::general},
    LookSpec{Look::doubtful_words, "Pool-check-doubtful-words", ink, lantern_bright, 9.5, thin, upright, wrap,
             A::left, B::box, N::general},
    LookSpec{Look::level_fix, "Pool-level-fix", paper, brick, 10, bold, upright, one_line, A::left, B::box,
             N::general},
    LookSpec{Look::level_ask, "Pool-level-ask", ink, lantern_bright, 10, bold, upright, one_line, A::left,
             B::box, N::general},
    LookSpec{Look::level_note, "Pool-level-note", deep_water, mist, 10, thin, italic, one_line, A::left,
             B::box, N::general},
    LookSpec{Look::answered, "Pool-answered", moss, moss_pale, 10, thin, upright, wrap, A::left, B::box,
             N::general},
    LookSpec{Look::fixed_text, "Pool-written-text", ink, paper, 9.5, thin, upright, wrap, A::left, B::below,
             N::general},
    LookSpec{Look::fixed_number, "Pool-written-number", ink, paper, 9.5, thin, upright, one_line, A::right,
             B::below, N::general},
    LookSpec{Look::fixed_date, "Pool-written-date", ink, paper, 9.5, thin, upright, one_line, A::left,
             B::below, N::date},
};

} // namespace

std::span<const LookSpec> looks() {
  return look_table;
}
const LookSpec& spec(Look look) {
  return look_table[static_cast<std::size_t>(look)];
}

} // namespace wetspell::workbook
