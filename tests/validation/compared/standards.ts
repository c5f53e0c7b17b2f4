import { bibliography, type SourceKey } from "../../../src/foundation/bibliography";
import { cryoscopeStandards } from "../../published/cryoscopeStandards";
import { DAIRY_TABLE_BAND_K, dairySucrose } from "../../published/dairySucrose";
import { eutectics, type Eutectic } from "../../published/eutectics";
import { naclMassPercent } from "../../published/naclIceLine";
import { osmometerStandards } from "../../published/osmometerStandards";
import { soluteNamed } from "../../published/solutionOf";
import { freezingFigure } from "./cellFigures";
import { comparisonOf, printedWithin, type Comparison, type Row } from "./comparison";
import { shortSource } from "./shortSource";

const SALT = "sodium chloride";

const held = (
  id: string,
  title: string,
  source: string,
  rows: readonly Row[],
  note?: string,
): Comparison =>
  comparisonOf(
    {
      id,
      title,
      source,
      use: "held out",
      quantity: "freezing",
      ...(note !== undefined && { note }),
    },
    rows,
  );

/** The sources of many rows, each once. */
const sourcesOf = (rows: readonly { readonly source: SourceKey }[]): string =>
  [...new Set(rows.map(({ source }) => bibliography[source]))].join("; ");

const saltFigure = (grams: number, printed: number, more = ""): Row =>
  freezingFigure({
    label: `${SALT}, ${grams} g per kg of water${more}`,
    group: SALT,
    grams: { water: 1000, [SALT]: grams },
    printed,
  });

const percentFigure = (solute: string, percent: number, printed: number, more = ""): Row =>
  freezingFigure({
    label: `${solute}, ${Number(percent.toFixed(2))} %${more}`,
    group: solute,
    grams: { water: 100 - percent, [solute]: percent },
    printed,
  });

const memory = (obtained: string) => (obtained === "from memory" ? ", from memory" : "");

/** Where a eutectic's composition is printed without its own uncertainty: ± 1 % of the mass. */
const COMPOSITION_PERCENT = 1;

/** A eutectic; its printed composition is uncertain, and so is the freezing point that goes with it. */
function eutecticFigure({ solute, massPercent, temperatureC, source, obtained }: Eutectic): Row {
  const stated = soluteNamed(solute).eutecticMassFraction?.uncertainty;
  const spread = stated === undefined ? COMPOSITION_PERCENT : 100 * stated;
  const more = `, ${shortSource(source)}${memory(obtained)}`;
  const at = (percent: number) => percentFigure(solute, percent, temperatureC, more);
  const [row, weaker, stronger] = [0, -spread, spread].map((off) => at(massPercent + off)) as [
    Row,
    Row,
    Row,
  ];
  const known = "computed" in weaker && "computed" in stronger;
  return known ? printedWithin(row, (weaker.computed - stronger.computed) / 2) : row;
}

/** Hall's ice line is read every half kelvin, as the tests do. */
const HALF_KELVINS = Array.from({ length: 41 }, (_, step) => (step + 1) / 2);

/** Solutions by which instruments are set, tables of the trade, and the ends of ice lines. */
export const standards = (): Comparison[] => [
  held(
    "cryoscope",
    "Sodium chloride by which milk cryoscopes are set",
    sourcesOf(cryoscopeStandards),
    cryoscopeStandards.map(({ gramsPerKgWater, freezingPointC, obtained }) =>
      saltFigure(gramsPerKgWater, freezingPointC, memory(obtained)),
    ),
  ),
  held(
    "osmometer",
    "Sodium chloride by which osmometers are set",
    `${bibliography.phEur20235}; from memory`,
    osmometerStandards.map(({ gramsPerKgWater, depressionK }) =>
      saltFigure(gramsPerKgWater, -depressionK),
    ),
  ),
  held(
    "dairy-sucrose",
    "Sucrose by the table of dairy textbooks",
    `${bibliography.leighton1927}; from memory`,
    dairySucrose.map(([grams, depressionK]) =>
      printedWithin(
        freezingFigure({
          label: `sucrose, ${grams} g per 100 g of water`,
          group: "sucrose",
          grams: { water: 100, sucrose: grams },
          printed: -depressionK,
        }),
        DAIRY_TABLE_BAND_K,
      ),
    ),
    "A table of 1891, taken as ± 0.06 K: so far it is from the handbook of today (RMS), and its weak end lies further below the ideal law than any other print.",
  ),
  held(
    "ice-line",
    "Ice line of sodium chloride in frozen inclusions",
    `${bibliography.bodnar1993}; coefficients from memory`,
    HALF_KELVINS.map((depressionK) =>
      percentFigure(SALT, naclMassPercent(depressionK), -depressionK),
    ),
    "A printed polynomial, read every half kelvin.",
  ),
  held(
    "eutectics",
    "Eutectic points, where ice meets the second solid",
    sourcesOf(eutectics),
    eutectics.map(eutecticFigure),
    "A handbook’s eutectic is the coldest and strongest solution in it, where its figures scatter most. Its composition counts as ± 1 % of the mass where print does not say.",
  ),
];
