import { bibliography, type SourceKey } from "../../../src/foundation/bibliography";
import { cryoscopeStandards } from "../../published/cryoscopeStandards";
import { dairySucrose } from "../../published/dairySucrose";
import { eutectics } from "../../published/eutectics";
import { naclMassPercent } from "../../published/naclIceLine";
import { osmometerStandards } from "../../published/osmometerStandards";
import { freezingFigure } from "./cellFigures";
import { comparisonOf, type Comparison, type Row } from "./comparison";
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
      freezingFigure({
        label: `sucrose, ${grams} g per 100 g of water`,
        group: "sucrose",
        grams: { water: 100, sucrose: grams },
        printed: -depressionK,
      }),
    ),
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
    eutectics.map(({ solute, massPercent, temperatureC, source, obtained }) =>
      percentFigure(
        solute,
        massPercent,
        temperatureC,
        `, ${shortSource(source)}${memory(obtained)}`,
      ),
    ),
    "A handbook’s eutectic is the coldest and strongest solution in it, where its figures scatter most.",
  ),
];
