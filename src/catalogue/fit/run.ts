import { writeFileSync } from "node:fs";
import { join } from "node:path";
import { solutes } from "../solutes";
import { fitSolute } from "./fitSolute";
import { freezingTables } from "./points";
import { plans } from "./plan";
import { soundDownToC } from "./soundness";
import { curveModule, fileNameOf } from "./writeCurve";

/** Run from the top of the project: npx tsx src/catalogue/fit/run.ts */
const CURVES = "src/catalogue/solutes/curves";

/** Fits every planned solute, prints what it found, and rewrites the files under solutes/curves/. */
async function run(): Promise<void> {
  for (const plan of plans) {
    const solute = solutes.find(({ name }) => name === plan.solute);
    if (solute === undefined) throw new Error(`${plan.solute} is not in the list of solutes.`);
    const fitted = fitSolute(plan, solute.molarMass.value);
    const { curve, curveRecord } = fitted;
    const { rmsK, largestK, points, checkedToC, relativeUncertainty } = curveRecord;
    console.log(
      `${plan.solute}: ${points} points to ${checkedToC} °C, RMS ${rmsK} K, largest ${largestK} K, ± ${(100 * relativeUncertainty).toFixed(1)} %, sound to ${soundDownToC(curve).toFixed(1)} °C`,
    );
    console.log(`  ${curveRecord.basis}`);
    console.log(`  ${JSON.stringify(curve)}`);
    writeFileSync(
      join(CURVES, `${fileNameOf(plan.solute)}.ts`),
      await curveModule(plan.solute, fitted),
    );
  }
  for (const { solute, source, use, reason, massPercent } of freezingTables) {
    if (use !== "fit")
      console.log(`${use}: ${solute}, ${source}, ${massPercent.length} rows: ${reason ?? ""}`);
  }
}

void run();
