// Stores a CSV file as a workbook the way web services export theirs: row by row (exceljs's stream), texts inside the
// cells, dates and numbers with formats of their own.
//
// node csv_to_xlsx.js IN.csv OUT.xlsx
const ExcelJS = require("exceljs");

function typed(words) {
  if (/^\d{4}-\d\d-\d\d$/.test(words)) return new Date(words);
  return words !== "" && !isNaN(words) ? Number(words) : words;
}

async function main() {
  const [source, target] = process.argv.slice(2);
  const lines = await new ExcelJS.Workbook().csv.readFile(source, { map: typed });
  const workbook = new ExcelJS.stream.xlsx.WorkbookWriter({ filename: target, useSharedStrings: false, useStyles: true });
  const sheet = workbook.addWorksheet("Export");
  lines.eachRow({ includeEmpty: true }, (line, number) => {
    const row = sheet.getRow(number);
    line.eachCell((cell, column) => {
      if (cell.value === "") return;
      row.getCell(column).value = cell.value;
      row.getCell(column).numFmt = cell.value instanceof Date ? "d mmm yyyy" : "General";
    });
    row.commit();
  });
  await workbook.commit();
}

main();
