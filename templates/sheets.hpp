// The sheets of the workbook, one function each.
#pragma once

#include "filling.hpp"
#include "model.hpp"

namespace wetspell::workbook {

Sheet start_sheet(const Filling& filling);
Sheet pools_sheet(const Filling& filling);
Sheet people_sheet(const Filling& filling);
Sheet visits_sheet(const Filling& filling);
Sheet life_sheet(const Filling& filling);
Sheet findings_sheet(const Filling& filling);
Sheet classes_sheet(const Filling& filling);
Sheet species_sheet(const Filling& filling);
Sheet limits_sheet(const Filling& filling);

} // namespace wetspell::workbook
