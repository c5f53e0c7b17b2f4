/**
 * Prints what the audit says of strangers' workbooks, which are right in all they say (`tests/strangers`): per lot how many
 * are told something that is not so. Of the lots held out nothing but the counts is printed: they show how the audit does
 * on small sheets it has never met only as long as nobody looks at them.
 *
 *   npx tsx tests/benchmarks/auditStrangers.ts             the table
 *   npx tsx tests/benchmarks/auditStrangers.ts --findings  each wrong finding in the lots looked at as one line
 */
import { parseArgs } from "node:util";
import { heldOutBooks, seenBooks } from "../strangers/lots";
import { wronglyTold } from "../strangers/wronglyTold";
import type { StrangersBook } from "../strangers/strangersBook";

const { values: asked } = parseArgs({ options: { findings: { type: "boolean", default: false } } });

function printLot(name: string, books: readonly StrangersBook[], isSeen: boolean): void {
  const told = books.map((book) => ({ title: book.title, findings: wronglyTold(book) }));
  const count = (severity: string, findings: (typeof told)[number]["findings"]) =>
    findings.filter((finding) => finding.severity === severity).length;
  const bad = told.filter(
    ({ findings }) => count("error", findings) > 0 || count("warning", findings) > 1,
  );
  const any = told.filter(({ findings }) => findings.length > 0);
  console.log(
    `${name.padEnd(16)} ${books.length} books; ${bad.length} with an error or two warnings that are not so, ${any.length} with anything that is not`,
  );
  if (!asked.findings || !isSeen) return;
  for (const { title, findings } of any)
    for (const { rule, sheet, cell, message } of findings)
      console.log(`  ${title}: ${rule} ${sheet}!${cell} ${message}`);
}

for (const [name, books] of Object.entries(seenBooks)) printLot(name, books, true);
console.log("held out:");
for (const [name, books] of Object.entries(heldOutBooks)) printLot(name, books, false);
