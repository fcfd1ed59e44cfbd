// Types rows into a workbook as a volunteer with another program does, by exceljs.
//
// node fill_xlsx.js IN OUT   reads from standard input {"sheet", "rename", "rows": [{heading: content}]}: the sheet to
// type into, its new name, and what is typed below the headings. A content is whatever exceljs takes for a cell;
// "date:2026-06-01" is typed as a date, "time:09:40" as a time of day.
const ExcelJS = require("exceljs");
const fs = require("fs");

function content(words) {
  const [, kind, digits] = /^(date|time):(.*)$/.exec(words) || [];
  if (kind === "date") return new Date(digits);
  if (kind === "time") return new Date(`1899-12-30T${digits}Z`); // a workbook counts days from there
  return words;
}

/** The row of the headings and the column of each: the first row with a cell "Pool". */
function headings(sheet) {
  for (let row = 1; row <= sheet.rowCount; ++row) {
    const columns = {};
    sheet.getRow(row).eachCell((cell, column) => (columns[cell.text.split(" (")[0]] = column));
    if ("Pool" in columns) return [row, columns];
  }
  throw new Error("no headings on " + sheet.name);
}

async function main() {
  const [source, target] = process.argv.slice(2);
  const wanted = JSON.parse(fs.readFileSync(0, "utf8"));
  const workbook = new ExcelJS.Workbook();
  await workbook.xlsx.readFile(source);
  const sheet = workbook.getWorksheet(wanted.sheet);
  const [at, columns] = headings(sheet);
  wanted.rows.forEach((row, index) => {
    for (const [heading, words] of Object.entries(row)) {
      if (!(heading in columns)) throw new Error("no heading " + heading);
      sheet.getRow(at + 1 + index).getCell(columns[heading]).value = content(words);
    }
  });
  if (wanted.rename) sheet.name = wanted.rename;
  await workbook.xlsx.writeFile(target);
}

main();
