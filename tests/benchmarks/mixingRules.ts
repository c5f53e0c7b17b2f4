/**
 * Holds the mixing rule and its rival, the plain sum of the single depressions, against every mixture in
 * print; prints RMS and largest miss of both, in K.
 * Run: npx tsx tests/benchmarks/mixingRules.ts
 */
import { largest, rootMeanSquare } from "../../src/catalogue/fit/residuals";
import { missesOfBothRules, mixtures } from "../published/mixtures";

const shown = (misses: readonly number[]) =>
  `RMS ${rootMeanSquare(misses).toFixed(3)}, largest ${largest(misses).toFixed(3)}`;

for (const [name, rows] of mixtures) {
  const { rule, sum } = missesOfBothRules(rows);
  console.log(`${name}, ${rows.length} rows`);
  console.log(`  each holds its own water: ${shown(rule)}`);
  console.log(`  plain sum: ${shown(sum)}`);
}
