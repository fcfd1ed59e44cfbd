#include "summary/page_content.hpp"

#include <fmt/format.h>

#include <algorithm>

namespace wetspell::addin {

namespace {

constexpr std::size_t title_row = 0, words_row = 1, section_row = 3, chart_height = 20, most_findings = 12;

std::optional<std::uint32_t> pool_of(const Season& season, const Finding& finding) {
  Ref pool;
  if (finding.table == TableKind::pools)
    return finding.record;
  if (finding.table == TableKind::visits)
    pool = season.visits[finding.record].pool;
  else if (finding.table == TableKind::life)
    pool = season.life[finding.record].pool;
  return pool.known() ? std::optional(static_cast<std::uint32_t>(pool.index)) : std::nullopt;
}

std::vector<const Finding*> findings_of(const Season& season, const CheckReport& report, std::uint32_t pool) {
  std::vector<const Finding*> all;
  for (const Finding& finding : report.findings)
    if (finding.open() && pool_of(season, finding) == pool)
      all.push_back(&finding);
  std::stable_sort(all.begin(), all.end(), [](const Finding* one, const Finding* other) {
    return one->rule->level < other->rule->level;
  });
  return all;
}

std::string with_unit(std::string_view words, Figured figured, const Settings& settings) {
  return fmt::format("{} ({})", words, shown_unit(figured, settings));
}

std::string people_of(const Season& season, const Visit& visit) {
  const std::string first = to_text(season.cell(Field::visit_person, visit.row));
  const std::string second = to_text(season.cell(Field::visit_second_person, visit.row));
  return second.empty() ? first : first + ", " + second;
}

class Page {
public:
  Page(const SeasonHistory& history, const CheckReport& report, const PoolSummary& summary)
      : season_(history.season), pool_(history.pools[summary.pool]), summary_(summary),
        findings_(findings_of(history.season, report, summary.pool)) {}

  PageContent content() {
    PageContent content;
    content.chart_row = section_row;
    content.chart_rows = chart_height;
    content.visits_heading = section_row + chart_height + 1;
    content.visits = pool_.visits.size();
    content.figures_heading = section_row;
    content.figures = summary_.figures.size();
    std::size_t rows = content.visits_heading + 1 + content.visits;
    if (!findings_.empty()) {
      content.findings_section = rows + 1;
      content.findings_heading = content.findings_section + 1;
      content.findings = std::min(findings_.size(), most_findings);
      rows = content.findings_heading + 1 + content.findings;
    }
    rows = std::max(rows, content.figures_heading + 1 + content.figures);
    content.cells = Table(Place{}, rows, page_columns);
    head(content.cells);
    visits(content);
    figures(content);
    if (!findings_.empty())
      findings(content);
    return content;
  }

private:
  void say(Table& cells, std::size_t row, std::size_t column, std::string_view words) const {
    if (!words.empty())
      cells.at(row, column) = Cell::of_text(words);
  }

  void head(Table& cells) const {
    const Pool& pool = season_.pools[summary_.pool];
    const bool listed = season_.where(TableKind::pools).found();
    say(cells, title_row, 0,
        pool.name.empty() ? "Pool " + pool.code : fmt::format("Pool {}: {}", pool.code, pool.name));
    std::string words;
    const auto add = [&](const std::string& part) {
      if (!part.empty())
        words += (words.empty() ? "" : "; ") + part;
    };
    add(season_.settings.programme);
    if (listed)
      add(to_text(season_.cell(Field::pool_locality, pool.row)));
    add(fmt::format("{} {} that count{}", pool_.visits.size(), pool_.visits.size() == 1 ? "visit" : "visits",
                    pool_.visits.size() == 1 ? "s" : ""));
    add(findings_.empty()
            ? "no open finding"
            : fmt::format("{} open {}", findings_.size(), findings_.size() == 1 ? "finding" : "findings"));
    say(cells, words_row, 0, words + ".");
  }

  void visits(PageContent& content) const {
    const Settings& settings = season_.settings;
    Table& cells = content.cells;
    const std::size_t heading = content.visits_heading;
    say(cells, heading, day, "Day");
    say(cells, heading, water, "Water");
    say(cells, heading, depth, with_unit("Depth", Figured::depth, settings));
    say(cells, heading, dry, "Dry");
    say(cells, heading, full, "Full (%)");
    say(cells, heading, temperature, with_unit("Mean", Figured::temperature, settings));
    say(cells, heading, area, with_unit("Area", Figured::area, settings));
    say(cells, heading, people, "By");
    say(cells, heading, photographs, "Photographs");
    for (std::size_t i = 0; i < pool_.visits.size(); ++i) {
      const CountedVisit& visit = pool_.visits[i];
      const Visit& typed = season_.visits[visit.visit];
      const std::size_t row = heading + 1 + i;
      const auto number = [&](std::size_t column, const std::optional<Measured>& read, Figured figured) {
        if (read)
          cells.at(row, column) = Cell::of_number(shown(read->value, figured, settings));
      };
      cells.at(row, day) = Cell::of_date(visit.day);
      say(cells, row, water, to_text(season_.cell(Field::visit_water, typed.row)));
      number(depth, visit.depth, Figured::depth);
      if (visit.wet && !*visit.wet)
        cells.at(row, dry) = Cell::of_number(0);
      number(full, visit.fill, Figured::share);
      number(temperature, visit.temperature, Figured::temperature);
      number(area, visit.area, Figured::area);
      say(cells, row, people, people_of(season_, typed));
      say(cells, row, photographs, to_text(season_.cell(Field::visit_photos, typed.row)));
    }
  }

  void figures(PageContent& content) const {
    say(content.cells, content.figures_heading, figure_title, "Figure");
    say(content.cells, content.figures_heading, figure_words,
        "with its interval and n, the readings behind it");
    for (std::size_t i = 0; i < summary_.figures.size(); ++i) {
      const std::size_t row = content.figures_heading + 1 + i;
      say(content.cells, row, figure_title, full_title(summary_.figures[i]));
      say(content.cells, row, figure_words, in_words(summary_.figures[i], season_.settings));
    }
  }

  void findings(PageContent& content) const {
    Table& cells = content.cells;
    const std::size_t left = findings_.size() - content.findings;
    say(cells, content.findings_section, 0,
        left == 0 ? std::string("Open findings")
                  : fmt::format("Open findings ({} more on the findings sheet)", left));
    say(cells, content.findings_heading, 0, "Level");
    say(cells, content.findings_heading, 1, "Where");
    say(cells, content.findings_heading, 2, "What");
    for (std::size_t i = 0; i < content.findings; ++i) {
      const std::size_t row = content.findings_heading + 1 + i;
      say(cells, row, 0, std::string(name(findings_[i]->rule->level)));
      say(cells, row, 1, to_text(findings_[i]->place));
      say(cells, row, 2, findings_[i]->message);
    }
  }

  const Season& season_;
  const PoolHistory& pool_;
  const PoolSummary& summary_;
  std::vector<const Finding*> findings_;
};

} // namespace

PageContent pageContent(const SeasonHistory& history, const CheckReport& report, const PoolSummary& summary) {
  return Page(history, report, summary).content();
}

} // namespace wetspell::addin
