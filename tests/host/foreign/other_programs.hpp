#pragma once
// Workbooks written by other programs than the office.

#include <nlohmann/json.hpp>

#include <filesystem>
#include <string>
#include <utility>
#include <vector>

namespace wetspell::host {

/// Gnumeric reads the file, types into cells ("Visits!B4=P2"), works everything out and writes the other file
/// in the format of its ending (.xlsx, .ods, .xls).
void byGnumeric(const std::filesystem::path& from, const std::filesystem::path& to,
                const std::vector<std::string>& typed);

/// openpyxl does the same as fill_xlsx.py describes it.
void byOpenpyxl(const std::filesystem::path& from, const std::filesystem::path& to,
                const nlohmann::json& wanted);

/// exceljs does the same as fill_xlsx.js describes it.
void byExceljs(const std::filesystem::path& from, const std::filesystem::path& to,
               const nlohmann::json& wanted);

/// libxlsxwriter writes a new workbook with one sheet; texts that begin with "=" are numbers.
void byXlsxwriter(const std::filesystem::path& to, const std::string& sheet,
                  const std::vector<std::vector<std::string>>& rows);

} // namespace wetspell::host
