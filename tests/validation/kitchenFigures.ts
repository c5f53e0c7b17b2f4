import { callFunction } from "../../src/worksheet/callFunction";
import type { Solution } from "../../src/engine/dissolved";
import { freezingPointC } from "../../src/engine/freezingPoint";
import { waterActivity } from "../../src/engine/waterActivity";
import { bibliography, type SourceKey } from "../../src/foundation/bibliography";
import { WATER_MOLAR_MASS_KG_PER_MOL } from "../../src/foundation/constants";
import { isProblem } from "../../src/foundation/problem";
import { cryoscopeStandards } from "../published/cryoscopeStandards";
import { dairySucrose } from "../published/dairySucrose";
import { eutectics } from "../published/eutectics";
import { fruitFreezingPoints } from "../published/fruitFreezingPoints";
import { honeyWaterActivity, meanHoney } from "../published/honeyActivity";
import { iceCreamMixes, leightonFreezingPointC } from "../published/iceCreamMixes";
import { mixtures } from "../published/mixtures";
import { osmometerStandards } from "../published/osmometerStandards";
import { saturatedSolutions } from "../published/saturatedSolutions";
import { soluteNamed, solutionOf } from "../published/solutionOf";
import type { ComparedFigure, Comparison } from "./comparison";
import { CLASSROOM_KF, freezingFigure } from "./solutionFigures";

type Figures = readonly ComparedFigure[];

const held = (
  id: string,
  title: string,
  source: string,
  figures: Figures,
  unit: Comparison["unit"] = "°C",
): Comparison => ({ id, title, source, use: "held out", unit, figures });

const molalityOf = (solute: string, gramsPerKgWater: number): number =>
  gramsPerKgWater / soluteNamed(solute).molarMass.value;

/** Particles per kg of water if everything fell apart: what the ideal law counts. */
const idealOsmolality = (grams: Readonly<Record<string, number>>, waterGrams: number): number =>
  Object.entries(grams).reduce((sum, [name, amount]) => {
    const { molarMass, vantHoff } = soluteNamed(name);
    return sum + (vantHoff.value * amount) / molarMass.value / (waterGrams / 1000);
  }, 0);

function mixedFigure(
  label: string,
  group: string,
  solution: Solution,
  printed: number,
  idealOsmol: number | null,
): ComparedFigure[] {
  const computed = freezingPointC(solution);
  if (isProblem(computed)) return [];
  const ideal = idealOsmol === null ? null : -CLASSROOM_KF * idealOsmol;
  return [{ label, group, printed, computed, ideal, band: null }];
}

const cryoscope = (): Comparison[] =>
  [...new Set(cryoscopeStandards.map(({ source }) => source))].map((source: SourceKey) =>
    held(
      `cryoscope-${source}`,
      "Sodium chloride standards of milk cryoscopes",
      bibliography[source],
      cryoscopeStandards
        .filter((standard) => standard.source === source)
        .flatMap(({ gramsPerKgWater, freezingPointC: printed }) =>
          freezingFigure(
            "sodium chloride",
            molalityOf("sodium chloride", gramsPerKgWater),
            printed,
            `${gramsPerKgWater} g/kg`,
          ),
        ),
    ),
  );

const osmometer = (): Comparison =>
  held(
    "osmometer",
    "Sodium chloride standards of osmometers",
    bibliography.phEur20235,
    osmometerStandards.flatMap(({ gramsPerKgWater, depressionK }) =>
      freezingFigure(
        "sodium chloride",
        molalityOf("sodium chloride", gramsPerKgWater),
        -depressionK,
        `${gramsPerKgWater} g/kg`,
      ),
    ),
  );

const dairyTable = (): Comparison =>
  held(
    "dairy-sucrose",
    "Sucrose by the table of dairy textbooks",
    bibliography.leighton1927,
    dairySucrose.flatMap(([grams, depressionK]) =>
      freezingFigure(
        "sucrose",
        molalityOf("sucrose", 10 * grams),
        -depressionK,
        `${grams} g per 100 g of water`,
      ),
    ),
  );

const eutecticPoints = (): Comparison =>
  held(
    "eutectics",
    "Eutectic points, where ice and the second solid meet",
    "Several sources, named in tests/published/eutectics.ts; most from memory",
    eutectics.flatMap(({ solute, massPercent, temperatureC }) =>
      freezingFigure(
        solute,
        molalityOf(solute, (1000 * massPercent) / (100 - massPercent)),
        temperatureC,
        `${solute}, ${massPercent} %`,
      ),
    ),
  );

const mixed = (): Comparison[] =>
  mixtures.map(([name, rows], at) =>
    held(
      `mixture-${at}`,
      "Mixtures of solutes",
      name,
      rows.flatMap(({ solution, printedC }, row) =>
        mixedFigure(`row ${row + 1}`, name, solution, printedC, null),
      ),
    ),
  );

const iceCream = (): Comparison =>
  held(
    "ice-cream",
    "Ice-cream mixes by the dairy textbooks' method",
    bibliography.leighton1927,
    iceCreamMixes.flatMap((mix) => {
      const grams = {
        sucrose: mix.sucrose,
        lactose: 0.545 * mix.milkSolidsNotFat,
        "milk salts": 0.078 * mix.milkSolidsNotFat,
      };
      return mixedFigure(
        mix.name,
        "ice cream",
        solutionOf(mix.water, grams),
        leightonFreezingPointC(mix),
        idealOsmolality(grams, mix.water),
      );
    }),
  );

const first = (name: string, ...args: readonly unknown[]) => callFunction(name, ...args)[0]?.[0];

const fruit = (): Comparison =>
  held(
    "fruit",
    "Fruit from its composition",
    "ASHRAE Handbook, Refrigeration, thermal properties of foods; from memory",
    fruitFreezingPoints.flatMap(([name, printed]) => {
      const computed = first("FREEZINGPOINT", name, 100);
      const band = first("UNCERTAINTY", name, 100, "freezing point");
      const osmolality = first("OSMOLALITY", name, 100);
      if (typeof computed !== "number" || typeof osmolality !== "number") return [];
      const ideal = -CLASSROOM_KF * osmolality;
      const stated = typeof band === "number" ? band : null;
      return [{ label: name, group: "fruit", printed, computed, ideal, band: stated }];
    }),
  );

const HONEY_MOISTURES = [15, 16, 17, 17.2, 18, 19, 20, 21];

const honey = (): Comparison =>
  held(
    "honey",
    "Water activity of honey at 25 °C by its moisture",
    "Chirife, Zamora & Motto 2006 and Perez et al. 2009, mean of both regressions; from memory",
    HONEY_MOISTURES.flatMap((moisture) => {
      const drier = (100 - moisture) / (100 - 17.2);
      const grams = Object.fromEntries(
        Object.entries(meanHoney).map(([name, value]) => [name, value * drier]),
      );
      const computed = waterActivity(solutionOf(moisture, grams));
      if (isProblem(computed)) return [];
      const label = `${moisture} % water`;
      const printed = honeyWaterActivity(moisture);
      return [{ label, group: "honey", printed, computed, ideal: null, band: null }];
    }),
    "a_w",
  );

const saturated = (): Comparison =>
  held(
    "saturated",
    "Saturated sugar solutions at 25 °C",
    "Food texts, ± 0.01; from memory",
    saturatedSolutions.flatMap(({ solute, massPercent, waterActivity: printed }) => {
      const molality = molalityOf(solute, (1000 * massPercent) / (100 - massPercent));
      const { curve } = soluteNamed(solute);
      const computed = waterActivity({ waterKg: 1, solutes: [{ moles: molality, curve }] });
      if (isProblem(computed)) return [];
      const ideal = 1 / (1 + WATER_MOLAR_MASS_KG_PER_MOL * molality);
      return [{ label: solute, group: "saturated", printed, computed, ideal, band: 0.01 }];
    }),
    "a_w",
  );

const boiling = (): Comparison => {
  // Tressler et al. 1941: 65.46 % sucrose boils 3.9 K above water.
  const computed = first("BOILINGPOINT", [["water"], ["sucrose"]], [[34.54], [65.46]]);
  const elevation = first("IDEALELEVATION", (1000 * 65.46) / 34.54 / 342.297);
  return held(
    "boiling",
    "Boiling-point elevation of a sucrose solution",
    "Tressler et al. 1941",
    typeof computed === "number" && typeof elevation === "number"
      ? [
          {
            label: "sucrose, 65.46 %",
            group: "boiling",
            printed: 3.9,
            computed: computed - 100,
            ideal: elevation,
            band: null,
          },
        ]
      : [],
    "K",
  );
};

/** Everything but single solutes: standards, tables of the trade, mixtures, foods. All kept back from the fits. */
export const kitchenComparisons = (): Comparison[] => [
  ...cryoscope(),
  osmometer(),
  dairyTable(),
  eutecticPoints(),
  ...mixed(),
  iceCream(),
  fruit(),
  honey(),
  saturated(),
  boiling(),
];
