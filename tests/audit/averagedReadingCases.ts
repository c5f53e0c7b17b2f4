import type { ShortCell } from "../../src/workbook/sheetFromRows";
import { formula, type Rows } from "./bookOf";
import type { RuleCase } from "./ruleCase";

/** 0.1 mol of salt and 0.05 mol of sucrose: 0.2 mol/kg each, the salt in two particles: 0.74 and 0.37 K by the law. */
const record = (water: string, readings: Rows): Rows => [
  ["Kryoskopische Konstante", "K·kg/mol", 1.86],
  ["Probe", null, "Nr. 1", "Nr. 2"],
  ["gelöster Stoff", null, "Natriumchlorid", "Saccharose"],
  ["Molare Masse", "g/mol", 58.44, 342.3],
  ["Teilchen je Formeleinheit", "–", 2, 1],
  ["Einwaage Stoff", "g", 5.844, 17.115],
  [water, "g", 500, 250],
  ["Stoffmenge", "mol", formula("C6/C4", 0.1), formula("D6/D4", 0.05)],
  ["Molalität", "mol/kg", formula("C8*1000/C7", 0.2), formula("D8*1000/D7", 0.2)],
  ["Erniedrigung", "K", formula("$C$1*C9*C5", 0.744), formula("$C$1*D9*D5", 0.372)],
  ["Gefrierpunkt", "°C", formula("-C10", -0.744), formula("-D10", -0.372)],
  ...readings,
];

const read = (group: string, salt: number, sugar: number) =>
  [`Gefrierpunkt, Gruppe ${group}`, "°C", salt, sugar] as const;
const mean = (of: string, salt: number, sugar: number): readonly ShortCell[] => [
  ...["Gefrierpunkt, Mittel", "°C"],
  formula(of.replaceAll("#", "C"), salt),
  formula(of.replaceAll("#", "D"), sugar),
];
const apart = [read("A", -0.5, -0.4), read("B", -0.5, -0.3)];
const differs = { rule: "result-differs" } as const;
const water = "Einwaage Wasser (entmineralisiert)";

/** What a class read off a thermometer, and solutions whose water is said with its kind behind it. */
export const averagedReadingCases: readonly RuleCase[] = [
  ...["AVERAGE(#12:#13)", "MEDIAN(#12,#13)", "(#12+#13)/2"].map((of) => ({
    ...{ ...differs, cells: [], what: `two readings with ${of}` },
    rows: record(water, [...apart, mean(of, -0.5, -0.35)]),
  })),
  {
    ...{ ...differs, cells: [], what: "two readings below a blank that is averaged, too" },
    rows: record(water, [[], ...apart, mean("AVERAGE(#12:#14)", -0.5, -0.35)]),
  },
  {
    ...{ ...differs, cells: [], what: "answers typed beside those that formulas give" },
    rows: record(water, apart),
  },
  {
    ...{
      ...differs,
      cells: ["C12"],
      what: "one typed beside them, off by more than a thermometer",
    },
    rows: record(water, [read("A", -1.7, -0.4)]),
  },
  {
    ...{ ...differs, cells: ["C10", "C11"], what: "typed answers where no formula gives any" },
    rows: [...record(water, []).slice(0, 9), ...apart],
  },
  {
    ...{ ...differs, cells: ["C13", "C14"], what: "a reading far off, and its mean" },
    rows: record(water, [
      read("A", -0.7, -0.4),
      read("B", -2.7, -0.4),
      mean("AVERAGE(#12:#13)", -1.7, -0.4),
    ]),
  },
  ...["Wasser, destilliert", "Water (deionised)", "Wasser (aus der Leitung)", "aqua dest."].map(
    (words) => ({
      ...{ rule: "more-than-dissolves", cells: [], what: `a record with "${words}"` },
      rows: record(words, []),
    }),
  ),
];
