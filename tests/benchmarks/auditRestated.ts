/**
 * Prints how far the audit depends on how a sheet is put down: corpus books, each with a seeded mistake, are
 * audited as they are and with the same sheet stated in another way (more room, other spelling, names and tables
 * in formulas). For each way the share of books with exactly the same findings.
 *
 *   npx tsx tests/benchmarks/auditRestated.ts                              the table
 *   npx tsx tests/benchmarks/auditRestated.ts --differences --way colons   each difference as one line
 *   npx tsx tests/benchmarks/auditRestated.ts --count 12 --seed 7          more books, drawn otherwise
 *   npx tsx tests/benchmarks/auditRestated.ts --layout <part of name> --rule <id>
 */
import { parseArgs } from "node:util";
import { layouts } from "../corpus/layouts";
import { mutations } from "../corpus/mutations";
import { compareRestated } from "../corpus/restated/compare";
import { measuredOnly, restatements } from "../corpus/restated/restatements";
import { seedBooks } from "../corpus/seed";

const { values: asked } = parseArgs({
  options: {
    differences: { type: "boolean", default: false },
    way: { type: "string", default: "" },
    rule: { type: "string" },
    layout: { type: "string", default: "" },
    count: { type: "string", default: "4" },
    seed: { type: "string", default: "1" },
  },
});

const chosen = layouts.filter(({ name, isCsv }) => isCsv !== true && name.includes(asked.layout));
const books = mutations
  .filter(({ rule }) => asked.rule === undefined || rule === asked.rule)
  .flatMap((mutation) => seedBooks(mutation, chosen, Number(asked.count), Number(asked.seed)));

const ways = [...restatements, ...measuredOnly].filter(({ name }) => name.includes(asked.way));
for (const restatement of ways) {
  let same = 0;
  for (const book of books) {
    const difference = compareRestated(book, restatement);
    if (difference === null) same += 1;
    else if (asked.differences) {
      const [lost, more] = [difference.lost.join("; "), difference.more.join("; ")];
      console.log(`${book.mutation.rule} "${book.marked.layout}" LOST ${lost} MORE ${more}`);
    }
  }
  const share = ((100 * same) / books.length).toFixed(1);
  console.log(`${restatement.name.padEnd(34)} ${same} of ${books.length} the same (${share} %)`);
}
