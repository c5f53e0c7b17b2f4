import type { SourceKey } from "../../src/foundation/bibliography";

/** Where ice and the second solid meet: printed temperature and mass per cent (anhydrous). */
export interface Eutectic {
  readonly solute: string;
  readonly massPercent: number;
  readonly temperatureC: number;
  readonly source: SourceKey;
  readonly obtained: "from the source" | "from memory";
  /** How far we may be off, K: the target of the project, or the spread of printed compositions. */
  readonly toleranceK: number;
}

export const eutectics: readonly Eutectic[] = [
  {
    solute: "sucrose",
    massPercent: 62.4,
    temperatureC: -13.95,
    source: "youngJones1949",
    obtained: "from memory",
    toleranceK: 0.3,
  },
  {
    solute: "glucose",
    massPercent: 31.75,
    temperatureC: -5.3,
    source: "young1957",
    obtained: "from memory",
    toleranceK: 0.15,
  },
  {
    solute: "fructose",
    massPercent: 48.5,
    temperatureC: -10.1,
    source: "youngJonesLewis1952",
    obtained: "from memory",
    toleranceK: 0.8,
  },
  {
    solute: "sodium chloride",
    massPercent: 23.3,
    temperatureC: -21.1,
    source: "lange15",
    obtained: "from the source",
    toleranceK: 0.3,
  },
  {
    solute: "potassium chloride",
    massPercent: 19.7,
    temperatureC: -10.7,
    source: "ict",
    obtained: "from memory",
    toleranceK: 0.3,
  },
  {
    solute: "calcium chloride",
    massPercent: 30.2,
    temperatureC: -49.8,
    source: "ict",
    obtained: "from memory",
    toleranceK: 1.5,
  },
  {
    solute: "magnesium chloride",
    massPercent: 21,
    temperatureC: -33.5,
    source: "ict",
    obtained: "from memory",
    toleranceK: 1.5,
  },
  {
    solute: "ammonium chloride",
    massPercent: 19.7,
    temperatureC: -15.4,
    source: "ict",
    obtained: "from memory",
    toleranceK: 0.8,
  },
  {
    solute: "glycerol",
    massPercent: 66.7,
    temperatureC: -46.5,
    source: "lane1925",
    obtained: "from memory",
    toleranceK: 0.8,
  },
  {
    solute: "sodium bicarbonate",
    massPercent: 5.8,
    temperatureC: -2.33,
    source: "ict",
    obtained: "from memory",
    toleranceK: 0.15,
  },
  {
    solute: "sodium carbonate",
    massPercent: 5.8,
    temperatureC: -2.1,
    source: "ict",
    obtained: "from memory",
    toleranceK: 0.15,
  },
  {
    solute: "potassium nitrate",
    massPercent: 9.8,
    temperatureC: -2.84,
    source: "ict",
    obtained: "from memory",
    toleranceK: 0.15,
  },
  {
    solute: "sodium sulfate",
    massPercent: 3.9,
    temperatureC: -1.2,
    source: "ict",
    obtained: "from memory",
    toleranceK: 0.15,
  },
];
