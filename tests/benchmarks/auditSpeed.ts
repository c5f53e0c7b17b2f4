/**
 * Reads and audits workbooks of 100,000 and 200,000 rows × 10 columns: recipes in rows with a stated freezing
 * point, every one of them wrong, which is the worst case. Each runs in a process of its own; prints time,
 * peak memory and the ratio at twice the rows.
 * Run: npx tsx tests/benchmarks/auditSpeed.ts
 */
import { execFileSync } from "node:child_process";
import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import path from "node:path";
import type { AuditReport } from "../../src/audit/report/auditReport";
import { inWorker } from "../../src/cli/inWorker";
import { isProblem } from "../../src/foundation/problem";
import { handMadeXlsx } from "../workbook/handMadeXlsx";

const HEADERS = [
  "Recipe",
  "Water",
  "Sucrose",
  "Glucose",
  "Fructose",
  "Lactose",
  "Salt",
  "Lemon juice",
  "Total",
  "Freezing point",
];

const inline = (text: string) => `t="inlineStr"><is><t>${text}</t></is></c>`;

function rowXml(row: number): string {
  const amounts = [
    500 + (row % 7),
    100 + (row % 50),
    row % 20,
    row % 11,
    row % 5,
    row % 3,
    row % 40,
  ];
  const total = amounts.reduce((sum, grams) => sum + grams, 0);
  const cells = amounts.map(
    (grams, at) => `<c r="${String.fromCharCode(66 + at)}${row}"><v>${grams}</v></c>`,
  );
  return (
    `<row r="${row}"><c r="A${row}" ${inline(`r${row}`)}${cells.join("")}` +
    `<c r="I${row}"><f>SUM(B${row}:H${row})</f><v>${total}</v></c><c r="J${row}"><v>-3</v></c></row>`
  );
}

function book(rows: number): Uint8Array {
  const headers = HEADERS.map(
    (header, at) => `<c r="${String.fromCharCode(65 + at)}1" ${inline(header)}`,
  );
  const lines = [`<row r="1">${headers.join("")}</row>`];
  for (let row = 2; row <= rows + 1; row += 1) lines.push(rowXml(row));
  return handMadeXlsx(`<sheetData>${lines.join("")}</sheetData>`);
}

/** The work as the command line does it, in a process of its own so that its memory is its own. */
async function measure(file: string): Promise<void> {
  const started = performance.now();
  const task = { file, decimal: null, recalculation: true, corrections: [] };
  const report = await inWorker<AuditReport>("auditWorker.ts", task);
  if (isProblem(report)) throw new Error(report.message);
  const { recipes, recalculation } = report.summary;
  const peakMb = process.resourceUsage().maxRSS / 1024;
  const { calculated } = recalculation;
  console.log(JSON.stringify({ ms: performance.now() - started, peakMb, recipes, calculated }));
}

function run(folder: string, rows: number): number {
  const file = path.join(folder, `${rows}.xlsx`);
  writeFileSync(file, book(rows));
  const output = execFileSync(process.execPath, ["--import", "tsx", __filename, file], {
    encoding: "utf8",
  });
  const answer = JSON.parse(output) as Record<string, number>;
  const { ms = 0, peakMb = 0, recipes = 0, calculated = 0 } = answer;
  const line = `${rows} rows × 10 columns: ${Math.round(ms)} ms, peak ${Math.round(peakMb)} MB`;
  console.log(`${line}, ${recipes} recipes, ${calculated} formulas calculated anew`);
  return ms;
}

const [, , file] = process.argv;
if (file !== undefined) void measure(file);
else {
  const folder = mkdtempSync(path.join(tmpdir(), "audit-speed-"));
  const ratio = (1 / run(folder, 100_000)) * run(folder, 200_000);
  console.log(`twice the rows take ${ratio.toFixed(2)} times as long`);
  rmSync(folder, { recursive: true });
}
