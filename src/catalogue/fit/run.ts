import { join } from "node:path";
import { solutes } from "../solutes";
import { fitSolute } from "./fitSolute";
import { keepFile } from "./keepFile";
import { freezingPoints, freezingTables } from "./points";
import { plans, type HydrationPlan, type SeriesPlan } from "./plan";
import { residualsK } from "./residuals";
import { soundDownToC } from "./soundness";
import { tablesOf } from "./tablesOf";
import { curveModule, fileNameOf } from "./writeCurve";

/**
 * Run from the top of the project: npx tsx src/catalogue/fit/run.ts [--check]
 * Fits every planned solute, prints what it found and every table it used or left aside with the reason,
 * and rewrites the files under solutes/curves/; with --check it compares them instead.
 */
const CURVES = "src/catalogue/solutes/curves";

async function fitOne(plan: HydrationPlan | SeriesPlan): Promise<void> {
  const solute = solutes.find(({ name }) => name === plan.solute);
  if (solute === undefined) throw new Error(`${plan.solute} is not in the list of solutes.`);
  const fitted = fitSolute(plan, solute.molarMass.value);
  const { curve, curveRecord } = fitted;
  const { rmsK, largestK, points, checkedToC, relativeUncertainty } = curveRecord;
  console.log(
    `${plan.solute}: ${points} points to ${checkedToC} °C, RMS ${rmsK} K, largest ${largestK} K, ± ${(100 * relativeUncertainty).toFixed(1)} %, falling and positive to ${soundDownToC(curve).toFixed(1)} °C`,
  );
  console.log(`  ${curveRecord.basis}`);
  for (const line of tablesOf(plan.solute)) console.log(`  ${line}`);
  const misses = residualsK(curve, freezingPoints(plan.solute, solute.molarMass.value, "fit"));
  console.log(`  residuals of the fit, K: ${misses.map((miss) => miss.toFixed(3)).join(" ")}`);
  console.log(`  ${JSON.stringify(curve)}`);
  keepFile(join(CURVES, `${fileNameOf(plan.solute)}.ts`), await curveModule(plan.solute, fitted));
}

async function run(): Promise<void> {
  for (const plan of plans) await fitOne(plan);
  const planned = new Set(plans.map(({ solute }) => solute));
  const others = new Set(freezingTables.map(({ solute }) => solute).filter((s) => !planned.has(s)));
  for (const solute of others) {
    console.log(`${solute}: not fitted`);
    for (const line of tablesOf(solute)) console.log(`  ${line}`);
  }
}

void run();
