// Tables as JSON: how the sheets of a workbook travel from an office to the engine, with nothing lost.
#pragma once

#include "base/result.hpp"
#include "table/table.hpp"

#include <nlohmann/json_fwd.hpp>

#include <span>
#include <string>
#include <string_view>
#include <vector>

namespace wetspell {

/// [{"sheet", "row", "column", "cells": [[cell, ...], ...]}], row from 1, column from 0. A cell is null, a
/// number, a text, {"date": days since 1899-12-30} or {"error": as the sheet shows it}. Blank cells at a
/// row's end are left out. One line.
std::string json_from_tables(std::span<const Table> tables);

/// The way back. Refuses in words what json_from_tables does not write.
Result<std::vector<Table>> tables_from_json(std::string_view text);
/// The same from what was parsed already.
Result<std::vector<Table>> tables_from(const nlohmann::json& tables);

} // namespace wetspell
