import { curveUncertaintyFraction } from "../../src/catalogue/curveUncertainty";
import { freezingTables } from "../../src/catalogue/fit/points";
import { solutes } from "../../src/catalogue/solutes";
import { freezingPointC } from "../../src/engine/freezingPoint";
import { eutectics } from "../published/eutectics";
import { soluteNamed, solutionOf } from "../published/solutionOf";

const freezing = (solute: string, percent: number) =>
  freezingPointC(solutionOf(100 - percent, { [solute]: percent })) as number;

/** One stated standard uncertainty of a curve at a printed freezing point, K. */
const statedK = (solute: string, printedC: number) =>
  -printedC * curveUncertaintyFraction(soluteNamed(solute).curveRecord, printedC);

/** Printed tables round to 0.01 K. */
const ROUNDING_K = 0.005;

test("of all held-out freezing points at least 70 % lie within one stated uncertainty and 90 % within two", () => {
  const known = new Set<string>(solutes.map(({ name }) => name));
  const misses = freezingTables
    .filter(({ use, solute }) => use === "held out" && known.has(solute))
    .flatMap(({ solute, massPercent, freezingPointC: printed }) =>
      massPercent.flatMap((percent, i) => {
        const printedC = printed[i]!;
        if (printedC < -60) return []; // colder than is answered
        const missK = Math.abs(freezing(solute, percent) - printedC) - ROUNDING_K;
        return [missK / statedK(solute, printedC)];
      }),
    );
  expect(misses.length).toBeGreaterThan(200);
  const within = (times: number) => misses.filter((miss) => miss <= times).length / misses.length;
  expect(within(1)).toBeGreaterThan(0.7);
  expect(within(2)).toBeGreaterThan(0.9);
});

/** Where a composition is printed without its own uncertainty: ± 1 % of the mass. */
const COMPOSITION_PERCENT = 1;

test.each(eutectics)(
  "the eutectic of $solute lies within two standard uncertainties of curve and printed composition",
  ({ solute, massPercent, temperatureC }) => {
    const { eutecticMassFraction } = soluteNamed(solute);
    const spread = 100 * (eutecticMassFraction?.uncertainty ?? COMPOSITION_PERCENT / 100);
    const steps = [massPercent - spread, massPercent + spread].map((at) => freezing(solute, at));
    const fromComposition = Math.abs(steps[1]! - steps[0]!) / 2;
    const together = Math.hypot(statedK(solute, temperatureC), fromComposition);
    expect(Math.abs(freezing(solute, massPercent) - temperatureC)).toBeLessThan(2 * together);
  },
);
