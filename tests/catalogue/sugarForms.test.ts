import { isopiestic } from "../../src/catalogue/fit/figures/isopiestic";
import { fitHydration } from "../../src/catalogue/fit/hydrationFit";
import { referenceOsmoticCoefficient } from "../../src/catalogue/fit/pitzer";
import { freezingPoints, type FreezingPointOfOne } from "../../src/catalogue/fit/points";
import { residualsK, rootMeanSquare } from "../../src/catalogue/fit/residuals";
import type { HeldWaterCurve } from "../../src/engine/heldWaterCurve";
import { freezingPointC } from "../../src/engine/freezingPoint";
import { waterActivity } from "../../src/engine/waterActivity";
import { WATER_MOLAR_MASS_KG_PER_MOL } from "../../src/foundation/constants";
import { eutectics } from "../published/eutectics";
import { soluteNamed } from "../published/solutionOf";
import { starzakPeacockActivity, starzakPeacockFreezingC } from "../published/starzakPeacock";

const norrish = (constant: number): HeldWaterCurve => ({ form: "norrish", constant });

/** The Norrish constant with the least squares of printed freezing points, to 0.02. */
function norrishFittedTo(points: readonly FreezingPointOfOne[]): HeldWaterCurve {
  const tried = Array.from({ length: 400 }, (_, step) => norrish(1 + step / 50));
  const misfits = tried.map((curve) => rootMeanSquare(residualsK(curve, points)));
  return tried[misfits.indexOf(Math.min(...misfits))]!;
}

const single = (molality: number, curve: HeldWaterCurve) => ({
  waterKg: 1,
  solutes: [{ moles: molality, curve }],
});

const pointsOf = (name: string) => freezingPoints(name, soluteNamed(name).molarMass.value, "fit");

describe("sucrose at 25 °C against KCl (Robinson & Sinclair 1934; Scatchard, Hamer & Wood 1938): RMS in a_w", () => {
  const printed = isopiestic
    .filter(({ solute, temperatureC }) => solute === "sucrose" && temperatureC === 25)
    .flatMap(({ molalityMolPerKg, reference, referenceMolalityMolPerKg }) =>
      molalityMolPerKg.map((molality, i) => {
        const against = referenceMolalityMolPerKg[i]!;
        const theta = 2 * against * referenceOsmoticCoefficient(reference, against);
        return { molality, activity: Math.exp(-WATER_MOLAR_MASS_KG_PER_MOL * theta) };
      }),
    );
  const rmsOf = (activityAt: (molality: number) => number) =>
    rootMeanSquare(printed.map(({ molality, activity }) => activityAt(molality) - activity));
  const ofCurve = (curve: HeldWaterCurve) => (molality: number) =>
    waterActivity(single(molality, curve)) as number;

  test("hydration form 0.0001, Norrish 6.47 (Chirife 1980) 0.0002, Starzak & Peacock 1997 0.0004", () => {
    expect({
      hydration: rmsOf(ofCurve(soluteNamed("sucrose").curve)).toFixed(4),
      norrish: rmsOf(ofCurve(norrish(6.47))).toFixed(4),
      starzakPeacock: rmsOf((molality) => starzakPeacockActivity(molality, 25)).toFixed(4),
    }).toEqual({ hydration: "0.0001", norrish: "0.0002", starzakPeacock: "0.0004" });
  });
});

describe("the colder half of the CRC freezing points, foretold from the warmer half: RMS, K", () => {
  /** Sites of the hydration form; RMS of it and of Norrish, each with its one constant fitted to the warm half. */
  test.each([
    ["sucrose", 11, "0.03", "0.07"],
    ["glucose", 6, "0.04", "0.05"],
    ["fructose", 6, "0.04", "0.04"],
    ["maltose", 11, "0.12", "0.16"],
  ] as const)(
    "%s: hydration form (%d sites) %s K, Norrish %s K",
    (name, sites, hydrated, other) => {
      const points = pointsOf(name);
      const half = Math.min(...points.map((point) => point.freezingPointC)) / 2;
      const warm = points.filter((point) => point.freezingPointC >= half);
      const cold = points.filter((point) => point.freezingPointC < half);
      const rms = (curve: HeldWaterCurve) => rootMeanSquare(residualsK(curve, cold)).toFixed(2);
      expect([
        rms(fitHydration({ sites, warm: { ratio: 1 } }, warm)),
        rms(norrishFittedTo(warm)),
      ]).toEqual([hydrated, other]);
    },
  );

  test("sucrose: Starzak & Peacock 1997, fitted to other data, is 0.03 K off there", () => {
    const points = pointsOf("sucrose").filter(({ freezingPointC: printed }) => printed < -2.465);
    const misses = points.map(
      (point) => starzakPeacockFreezingC(point.molalityMolPerKg) - point.freezingPointC,
    );
    expect(rootMeanSquare(misses).toFixed(2)).toBe("0.03");
  });
});

describe("eutectics: computed °C, each form's constant from the CRC freezing points", () => {
  test.each([
    ["sucrose", "-14.1", "-13.5"],
    ["glucose", "-5.2", "-5.2"],
    ["fructose", "-10.8", "-10.7"],
  ] as const)("%s: hydration form %s, Norrish %s", (name, hydrated, other) => {
    const { massPercent } = eutectics.find(({ solute }) => solute === name)!;
    const { curve, molarMass } = soluteNamed(name);
    const molality = (1000 * massPercent) / (100 - massPercent) / molarMass.value;
    const at = (some: HeldWaterCurve) =>
      (freezingPointC(single(molality, some)) as number).toFixed(1);
    expect([at(curve), at(norrishFittedTo(pointsOf(name)))]).toEqual([hydrated, other]);
  });

  test("of sucrose (printed −13.95 °C): the hydration form is nearest, Starzak & Peacock give −13.6", () => {
    const { massPercent, temperatureC } = eutectics.find(({ solute }) => solute === "sucrose")!;
    const { curve, molarMass } = soluteNamed("sucrose");
    const molality = (1000 * massPercent) / (100 - massPercent) / molarMass.value;
    const miss = (computed: number) => Math.abs(computed - temperatureC);
    const ours = miss(freezingPointC(single(molality, curve)) as number);
    expect(starzakPeacockFreezingC(molality).toFixed(1)).toBe("-13.6");
    expect(ours).toBeLessThan(miss(starzakPeacockFreezingC(molality)));
    expect(ours).toBeLessThan(
      miss(freezingPointC(single(molality, norrishFittedTo(pointsOf("sucrose")))) as number),
    );
  });
});
