import { crc102 } from "../../src/catalogue/fit/figures/crc102";
import { isopiestic } from "../../src/catalogue/fit/figures/isopiestic";
import { osmotic25 } from "../../src/catalogue/fit/figures/osmotic25";
import type { FreezingTable } from "../../src/catalogue/fit/figureTable";
import { referenceOsmoticCoefficient } from "../../src/catalogue/fit/pitzer";
import { freezingPoints, freezingTables } from "../../src/catalogue/fit/points";
import { residualsK, rootMeanSquare, largest } from "../../src/catalogue/fit/residuals";
import { freezingPointC } from "../../src/engine/freezingPoint";
import { waterActivity } from "../../src/engine/waterActivity";
import { bibliography } from "../../src/foundation/bibliography";
import { WATER_MOLAR_MASS_KG_PER_MOL } from "../../src/foundation/constants";
import { honeyWaterActivity, meanHoney } from "../published/honeyActivity";
import { saturatedSolutions } from "../published/saturatedSolutions";
import { soluteNamed, solutionOf } from "../published/solutionOf";

const freezing = (waterGrams: number, grams: Readonly<Record<string, number>>) =>
  freezingPointC(solutionOf(waterGrams, grams)) as number;

/** Half of the last printed digit of the tables of freezing points. */
const ROUNDING_K = 0.005;

const tableMisses = ({ solute, massPercent, freezingPointC: printed }: FreezingTable) =>
  massPercent.map((percent, i) => freezing(100 - percent, { [solute]: percent }) - printed[i]!);

describe("CRC Handbook, 102nd ed., Concentrative Properties of Aqueous Solutions", () => {
  const of = (solute: string) => crc102.find((table) => table.solute === solute)!;

  test.each([
    ["sucrose", 0.03],
    ["glucose", 0.03],
    ["fructose", 0.03],
    ["lactose", 0.02],
    ["maltose", 0.04],
    ["mannitol", 0.01],
    ["citric acid", 0.03],
  ])("every freezing point of %s is met within %d K and its rounding", (solute, limitK) => {
    expect(largest(tableMisses(of(solute)))).toBeLessThanOrEqual(limitK + ROUNDING_K);
  });

  test("sodium chloride is met within 0.04 K to 10 %, 0.12 K to 20 %", () => {
    const table = of("sodium chloride");
    const misses = tableMisses(table).map(Math.abs);
    table.massPercent.forEach((percent, i) => {
      if (percent <= 20) expect(misses[i]).toBeLessThan(percent <= 10 ? 0.04 : 0.12);
    });
  });

  test("sugars above −5 °C are met with an RMS of 0.02 K", () => {
    const misses = ["sucrose", "glucose", "fructose", "maltose", "lactose"].flatMap((solute) => {
      const table = of(solute);
      return tableMisses(table).filter((_, i) => table.freezingPointC[i]! > -5);
    });
    expect(rootMeanSquare(misses)).toBeLessThan(0.02);
  });
});

describe("at 25 °C", () => {
  const activityOf = (solute: string, molality: number) =>
    waterActivity(
      solutionOf(1000, { [solute]: molality * soluteNamed(solute).molarMass.value }),
    ) as number;

  test("sucrose against KCl (Robinson & Sinclair 1934; Scatchard, Hamer & Wood 1938): a_w RMS 0.0005, largest 0.002", () => {
    const misses = isopiestic
      .filter(({ solute, temperatureC }) => solute === "sucrose" && temperatureC === 25)
      .flatMap(({ molalityMolPerKg, reference, referenceMolalityMolPerKg }) =>
        molalityMolPerKg.map((molality, i) => {
          const against = referenceMolalityMolPerKg[i]!;
          const theta = 2 * against * referenceOsmoticCoefficient(reference, against);
          return activityOf("sucrose", molality) - Math.exp(-WATER_MOLAR_MASS_KG_PER_MOL * theta);
        }),
      );
    expect(misses.length).toBeGreaterThan(50);
    expect(rootMeanSquare(misses)).toBeLessThan(0.0005);
    expect(largest(misses)).toBeLessThan(0.002);
  });

  test.each(
    osmotic25
      .filter(({ use }) => use === "held out")
      .map((table) => [table.solute, bibliography[table.source], table] as const),
  )(
    "%s: osmotic coefficients of %s give a_w within 0.004 (0.01 for CaCl2 and MgCl2)",
    (solute, _, table) => {
      const ions = soluteNamed(solute).vantHoff.value;
      table.molalityMolPerKg.forEach((molality, i) => {
        const theta = ions * molality * table.osmoticCoefficient[i]!;
        const printed = Math.exp(-WATER_MOLAR_MASS_KG_PER_MOL * theta);
        if (printed < 0.6) return; // below what the series is meant for
        const limit = ions === 3 ? 0.01 : 0.004;
        expect(Math.abs(activityOf(solute, molality) - printed)).toBeLessThan(limit);
      });
    },
  );

  test.each(saturatedSolutions.map((entry) => [entry.solute, entry] as const))(
    "saturated %s has the water activity food texts print, within 0.015",
    (solute, { massPercent, waterActivity: printed }) => {
      const computed = waterActivity(solutionOf(100 - massPercent, { [solute]: massPercent }));
      expect(Math.abs((computed as number) - printed)).toBeLessThan(0.015);
    },
  );

  test("honey at 15 to 20 % water (Chirife 2006, Perez 2009): a_w RMS 0.02, largest 0.03", () => {
    const misses = [15, 16, 17, 18, 19, 20].map((moisture) => {
      const drier = (100 - moisture) / (100 - 17.2);
      const grams = Object.fromEntries(
        Object.entries(meanHoney).map(([name, value]) => [name, value * drier]),
      );
      return (waterActivity(solutionOf(moisture, grams)) as number) - honeyWaterActivity(moisture);
    });
    expect(rootMeanSquare(misses)).toBeLessThan(0.02);
    expect(largest(misses)).toBeLessThan(0.03);
  });
});

describe("milk", () => {
  test("whole milk (88.13 % water, 4.78 % lactose, 8.6 % solids-not-fat) freezes at −0.522 ± 0.01 °C (Fox & McSweeney 1998)", () => {
    const computed = freezing(88.13, { lactose: 4.78, "milk salts": 0.078 * 8.6 });
    expect(Math.abs(computed + 0.522)).toBeLessThan(0.01);
  });

  test("skim milk lies between −0.512 and −0.540 °C (Fox & McSweeney 1998)", () => {
    const computed = freezing(90.84, { lactose: 5, "milk salts": 0.078 * 9 });
    expect(computed).toBeLessThan(-0.512);
    expect(computed).toBeGreaterThan(-0.54);
  });
});

describe("the files of the fits", () => {
  test("no figure that is held out or rejected is without a reason, and columns are of one length", () => {
    for (const { use, reason, massPercent, freezingPointC: printed } of freezingTables) {
      if (use !== "fit") expect(reason).toBeTruthy();
      expect(printed).toHaveLength(massPercent.length);
    }
  });

  test("a stated RMS is that of the figures it was fitted to", () => {
    const stated = [
      ["sucrose", "fit"],
      ["lactose", "held out"],
      ["sodium chloride", "fit"],
      ["ethanol", "fit"],
    ] as const;
    for (const [name, use] of stated) {
      const { curve, curveRecord, molarMass } = soluteNamed(name);
      const misses = residualsK(curve, freezingPoints(name, molarMass.value, use));
      expect(rootMeanSquare(misses)).toBeCloseTo(curveRecord.rmsK, 4);
    }
  });
});
