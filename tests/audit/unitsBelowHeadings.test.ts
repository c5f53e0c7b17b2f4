import type { ShortCell } from "../../src/workbook/sheetFromRows";
import { formula, type Rows } from "./bookOf";
import { expectFound, rulesOn } from "./tried";

// Expected numbers by i·Kf·n/kg with Kf = 1.86 K·kg/mol and IUPAC standard atomic weights.

/** Name, grams, grams of water, molar mass and particles of a solution. */
type Solution = readonly [string, number, number, number, number];

const SOLUTIONS: readonly Solution[] = [
  ["fructose", 5, 100, 180.16, 1],
  ["potassium chloride", 1, 100, 74.55, 2],
  ["glycerol", 2, 50, 92.09, 1],
];

interface Given {
  readonly solutions?: readonly Solution[];
  readonly sign?: string;
  readonly promise?: string;
}

/** Letters for headings, their units or dashes in the row below, and the water said twice, before the names. */
const problemClass = ({ solutions = SOLUTIONS, sign = "-", promise = "" }: Given = {}): Rows => [
  ["K_f(water) in K kg/mol", null, 1.86],
  [],
  ["Seat", "m(H2O)", "m(H2O)", "Solute", "M", "m(solute)", "n", "b", "i", "ΔT_f", "T_f"],
  ["-", "g", "kg", "-", "g/mol", "g", "mol", "mol/kg", "-", "K", "°C"],
  ...solutions.map(([name, grams, water, molar, ions], at): ShortCell[] => {
    const row = at + 5;
    const [moles, kilos] = [grams / molar, water / 1000];
    const falls = (ions * 1.86 * moles) / kilos;
    return [
      ...["abcdef"[at] ?? "", water, formula(`B${row}/1000`, kilos), name, molar, grams],
      ...[formula(`F${row}/E${row}`, moles), formula(`G${row}/C${row}`, moles / kilos), ions],
      formula(`I${row}*$C$1*H${row}`, falls),
      formula(`${sign}J${row}`, sign === "-" ? -falls : falls),
    ];
  }),
  [promise],
];

test("a row of units below letters is none of the list, nor are its letters names", () => {
  expect(rulesOn({ Class: problemClass() })).toEqual([]);
});

test("what is wrong in such a table is told of its solution", () => {
  const [fructose, , glycerol] = SOLUTIONS as [Solution, Solution, Solution];
  const chlorine: Solution = ["potassium chloride", 1, 100, 35.45, 2];
  const found = ["constant-of-a-solute E6", "result-differs J6", "result-differs K6"].map((one) =>
    one.replace(" ", " Class!"),
  );
  const sheets = { Class: problemClass({ solutions: [fructose, chlorine, glycerol] }) };
  expectFound({ what: "the molar mass of chlorine", sheets, found });
  const signs = [5, 6, 7].map((row) => `freezing-point-sign Class!K${row}`);
  expectFound({
    what: "no minus",
    sheets: { Class: problemClass({ sign: "" }) },
    found: signs,
  });
});

const soda: readonly Solution[] = [["sodium bicarbonate", 1, 50, 84.01, 2]];

const OFF = ["ideal-law-too-far-off Class!J5", "ideal-law-too-far-off Class!K5"];

test.each<[promise: string, found: readonly string[]]>([
  ["", OFF],
  ["Errors of the dilute law stay below 0.3 K over this table.", []],
  ["The formula is for ideal solutions. For my jars it can be 0.2 K wrong.", []],
  ["Accept 0.2 K either way: the ideal law comes that near.", []],
  ["Nach oben und unten 0,2 K zulassen.", []],
  ["Accept 0.86 K from the ideal law.", OFF],
  ["The balance's errors stay below 0.3 g.", OFF],
])("after “%s” the ideal law is told to be off, or not", (promise, found) => {
  expectFound({
    what: promise,
    sheets: { Class: problemClass({ solutions: soda, promise }) },
    found,
  });
});

/** Vessels weighed empty and full, their difference, then what is worked out. */
const byDifference = (ionsOfSalt: string): Rows => [
  ["Konstante K_f (K·kg/mol)", 1.86],
  [],
  [
    ...["Azubi", "Substanz", "Becher leer", "Becher voll", "Netto", "Wasser dazu", "Molmasse"],
    ...["Teilchen", "Stoffmenge", "Molalität", "Erniedrigung", "Gefrierpunkt"],
  ],
  ["–", "–", "g", "g", "g", "g", "g/mol", "je Einheit", "mol", "mol/kg", "K", "°C"],
  ...(
    [
      ["Fruktose", 14, 300, 180.16, 1],
      ["Natriumchlorid", 3, 200, 58.44, 2],
      ["Saccharose", 20, 200, 342.3, 1],
    ] as const
  ).map(([name, grams, water, molar, ions], at): ShortCell[] => {
    const row = at + 5;
    const [moles, counted] = [grams / molar, ions === 2 ? ionsOfSalt : `*H${row}`];
    const perKg = (1000 * moles) / water;
    const falls = 1.86 * perKg * (counted === "" ? 1 : ions);
    return [
      ...[`Platz ${at + 1}`, name, 48.2, 48.2 + grams, formula(`D${row}-C${row}`, grams)],
      ...[water, molar, ions, formula(`E${row}/G${row}`, moles)],
      formula(`1000*I${row}/F${row}`, perKg),
      ...[formula(`J${row}${counted}*$B$1`, falls), formula(`0-K${row}`, -falls)],
    ];
  }),
];

test("a beaker, empty and full, is no ingredient, whatever its columns are called", () => {
  expectFound({ what: "right", sheets: { Lab: byDifference("*H6") }, found: [] });
  const found = ["inconsistent-formula Lab!K6", "particles-not-counted Lab!K6"];
  expectFound({ what: "ions left out", sheets: { Lab: byDifference("") }, found });
});

/** Substances on a sheet of their own; water in kilograms, worked out of the grams beside it. */
const withData = (molarOfSalt: number): Readonly<Record<string, Rows>> => ({
  Stoffdaten: [
    ["Stoff", "Formel", "M / (g/mol)", "ν"],
    ["Saccharose", "C12H22O11", 342.3, 1],
    ["Natriumchlorid", "NaCl", molarOfSalt, 2],
    ["Fruktose", "C6H12O6", 180.16, 1],
    [],
    ["K_f(H2O) / (K·kg/mol)", null, 1.86],
  ],
  Übung: [
    [
      "m(Wasser) / kg",
      "m(Wasser) / g",
      "m(Stoff) / g",
      "Stoff",
      "ν·b / (mol/kg)",
      "ΔT / K",
      "T_f / °C",
    ],
    ...(
      [
        ["Saccharose", 13, 100, 342.3, 1],
        ["Natriumchlorid", 4, 500, molarOfSalt, 2],
        ["Fruktose", 22, 400, 180.16, 1],
      ] as const
    ).map(([name, grams, water, molar, ions], at): ShortCell[] => {
      const row = at + 2;
      const perKg = ((1000 * grams) / molar / water) * ions;
      const from = (column: string) => `Stoffdaten!$${column}$${row}`;
      return [
        ...[formula(`B${row}/1000`, water / 1000), water, grams, name],
        formula(`C${row}/${from("C")}/A${row}*${from("D")}`, perKg),
        ...[formula(`Stoffdaten!$C$6*E${row}`, 1.86 * perKg), formula(`-F${row}`, -1.86 * perKg)],
      ];
    }),
  ],
});

test("water that is said in grams and in kilograms is poured once, and a column ν is no amount", () => {
  expect(rulesOn(withData(58.44))).toEqual([]);
  const found = ["constant-of-a-solute Stoffdaten!C3", "result-differs Übung!E3"];
  expectFound({ what: "the molar mass of chlorine", sheets: withData(35.45), found });
});

/** Jars of a class in columns, with or without what of their water becomes ice. */
const jars = (withIce: boolean): Rows => [
  ["K for water", null, 1.86, "K kg/mol"],
  [],
  ["I dissolved", null, "erythritol", "sucrose"],
  ["How much of it", "g", 11, 25],
  ["In how much water", "g", 200, 200],
  ["One mole is", "g/mol", 122.12, 342.3],
  ["So I had", "mol", formula("C4/C6", 11 / 122.12), formula("D4/D6", 25 / 342.3)],
  ...(withIce ? [["Share of the water that is ice at −18 °C", "%", 89, 93]] : []),
];

test("what a class dissolves is kept in no freezer, unless it says how much of it becomes ice", () => {
  expect(rulesOn({ Jars: jars(false) })).not.toContain("polyol-will-crystallise");
  expect(rulesOn({ Jars: jars(true) })).toContain("polyol-will-crystallise");
});
