import { bibliography } from "../../src/foundation/bibliography";
import type { Figure } from "../../src/foundation/figure";
import type { Solute } from "../../src/catalogue/solute";
import type { Words } from "../words/words";
import { cellFormula } from "./cellFormula";
import type { FigureLine } from "./figureLine";

/** What RIME.SOLUTE calls each figure of a solute. */
const PROPERTIES = {
  molarMass: "molar mass",
  vantHoff: "van 't Hoff",
  sweetness: "sweetness",
  solubility20: "solubility 20",
  eutecticTemperature: "eutectic",
  eutecticMassFraction: "eutectic mass fraction",
  maxFreezeTemperature: "Tm'",
  maxFreezeSolids: "Cg'",
  glassTransitionDry: "dry glass transition",
  gordonTaylor: "Gordon-Taylor k",
} as const;

type FigureKey = keyof typeof PROPERTIES;

const KEYS = Object.keys(PROPERTIES) as readonly FigureKey[];

function lineOf(solute: Solute, key: FigureKey, figure: Figure, words: Words): FigureLine {
  return {
    label: words.soluteFigures[key],
    value: figure.value,
    unit: figure.unit === "1" ? "" : figure.unit,
    uncertainty: figure.uncertainty,
    source: bibliography[figure.source],
    obtained: figure.obtained,
    basis: figure.basis,
    cell: cellFormula("SOLUTE", solute.name, PROPERTIES[key]),
  };
}

/** The constants of a solute that the catalogue knows. */
export function soluteLines(solute: Solute, words: Words): readonly FigureLine[] {
  return KEYS.flatMap((key) => {
    const figure = solute[key];
    return figure === undefined ? [] : [lineOf(solute, key, figure, words)];
  });
}

/** Those that the catalogue does not have: to be said rather than left out. */
export const unknownFigures = (solute: Solute, words: Words): readonly string[] =>
  KEYS.filter((key) => solute[key] === undefined).map((key) => words.soluteFigures[key]);
