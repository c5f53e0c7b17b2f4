import { callFunction } from "../../../src/worksheet/callFunction";
import { a1, addSheet, put, putRow, shown, span, type Spot } from "../book";
import { grid } from "../grid";
import { note, type Kit, type Layout } from "../kit";
import { perHundred } from "../recipes";
import { choose, dissolved, gramsOf, idealGap, tolerated } from "../solution";
import { solutionRows } from "../solutionRows";

/** One solution as a column of labelled cells. */
function workedExample(kit: Kit): void {
  const { random, marked } = kit;
  const sheet = addSheet(marked.book, "Worked example");
  const solute = choose(random, 1, dissolved)[0]!;
  const waterGrams = random.pick([100, 250, 400]);
  const grams = gramsOf(random, solute, waterGrams);
  put(sheet, 0, 1, "Worked example: how cold is the solution?");
  const line = (row: number, label: string, content: string | number, format?: string): Spot => {
    put(sheet, row, 1, label);
    return put(sheet, row, 2, format === undefined ? content : shown(content, format));
  };
  const name = line(2, "Dissolved substance", solute.en);
  const mass = line(3, "Mass dissolved (g)", grams);
  const molar = line(4, "Molar mass (g/mol)", solute.molarMass, "0.00");
  const particles = line(5, "van 't Hoff factor", solute.particles);
  const water = line(6, "Mass of water (g)", waterGrams);
  const constant = line(7, "Kf of water (K kg/mol)", 1.86, "0.00");
  const molality = line(
    8,
    "Molality (mol/kg)",
    `=${a1(mass)}/${a1(molar)}/(${a1(water)}/1000)`,
    "0.000",
  );
  const law = `=${a1(particles)}*${a1(constant)}*${a1(molality)}`;
  const depression = line(9, "Freezing-point depression (K)", law, "0.00");
  const freezingPoint = line(10, "Freezing point (°C)", `=-${a1(depression)}`, "0.00");
  const gap = tolerated(idealGap([solute], [grams], waterGrams));
  const proviso = put(sheet, 12, 1, `By the ideal law; expect it within ${gap} K.`);
  marked.solutions.push({
    ...{ names: [name], grams: [mass], molarMasses: [molar], particles: [particles] },
    ...{ moles: [molality], water, constant, depression, freezingPoint, proviso },
  });
  const label = { ...water, column: 1 };
  marked.inputs.push({ label, value: water, bare: "Mass of water" });
}

/** Syrups, the water first, their shares before their ratios. */
function ratios(kit: Kit): void {
  const { random, marked } = kit;
  const sheet = addSheet(marked.book, "Zuckerlösungen");
  putRow(sheet, 1, 0, [
    ...["Wasser (g)", "Zucker (g)", "Gefrierpunkt (°C)", "Massenanteil Zucker (%)"],
    "Zucker je 100 g Wasser (g)",
  ]);
  for (let index = 0; index < 7; index += 1) {
    const [sugarGrams, waterGrams] = [random.whole(5, 40) * 5, random.whole(3, 9) * 50];
    const point = callFunction(
      "FREEZINGPOINT",
      [["sucrose"], ["water"]],
      [[sugarGrams], [waterGrams]],
    );
    const [water, sugar, , share, perWater] = putRow(sheet, 2 + index, 0, [
      ...[waterGrams, sugarGrams, Number((point[0]![0] as number).toFixed(1))],
      Number(((100 * sugarGrams) / (sugarGrams + waterGrams)).toFixed(1)),
      Number(((100 * sugarGrams) / waterGrams).toFixed(1)),
    ]) as [Spot, Spot, Spot, Spot, Spot];
    marked.strengths.push({ sugar, water, perWater, share });
  }
}

/** Alcohol for a class, one drink a line, with what each holds. */
function spirits(kit: Kit): void {
  const sheet = addSheet(kit.marked.book, "Bar");
  const heads = putRow(sheet, 2, 1, ["ABV (%)", "Poured (g)", "Ethanol (g)", "What"]);
  const drinks = [
    ...([[40, "rum 40 %"]] as const),
    ...([[25, "liqueur 25 %"]] as const),
    ...([[37.5, "gin 37.5 %"]] as const),
    ...([[13, "white wine"]] as const),
  ];
  const lines = drinks.map(([strength, name], index) => {
    const row = 3 + index;
    const [abv, grams] = putRow(sheet, row, 1, [strength, kit.random.whole(30, 200)]) as [
      Spot,
      Spot,
    ];
    put(sheet, row, 4, name);
    const content = `=RIME.ABVTOMASSFRACTION(${a1(abv)})*${a1(grams)}`;
    return { grams, abv, alcohol: put(sheet, row, 3, shown(content, "0.0")) };
  });
  kit.marked.alcohols.push(...lines);
  const spots = lines.map(({ alcohol }) => alcohol);
  kit.marked.formulaColumns.push({ spots, heading: heads[2]!, fixed: [] });
  note(kit, sheet, 8, 1, "Contains alcohol: adults only, not in pregnancy, not before driving.");
}

/** Labels of things bought in, below the mix that uses them. */
function labelled(kit: Kit): void {
  const { random, marked } = kit;
  const sheet = addSheet(marked.book, "Mix and labels");
  putRow(sheet, 0, 0, ["What", "g"]);
  const bought = ["farm yogurt base", "berry compote"];
  const items = [bought[0]!, bought[1]!, "water", "sugar"];
  const names = items.map((item, index) => put(sheet, index + 1, 0, item));
  const grams = items.map((_, index) => put(sheet, index + 1, 1, random.whole(12, 40) * 10));
  const headings = ["name", "solids", "fat", "sugars", "protein", "inert", "allergens"];
  putRow(sheet, 9, 0, headings);
  bought.forEach((item, index) => {
    const [fat, sugars, protein, inert] = [
      random.whole(0, 5),
      random.whole(10, 30),
      random.whole(1, 4),
      1,
    ];
    const solids = fat + sugars + protein + inert;
    const cells = putRow(sheet, 10 + index, 0, [
      ...[item, solids, fat, sugars, protein, inert, index === 0 ? "milk" : "none"],
    ]);
    const line = Object.fromEntries(headings.map((heading, at) => [heading, cells[at]!]));
    marked.ownLines.push({ ...line, water: line["solids"]! });
  });
  const call = `=RIME.FREEZINGPOINT(${span(names)},${span(grams)},$A$10:$G$12)`;
  putRow(sheet, 6, 0, ["Freezing point (°C)", shown(call, "0.00")]);
  put(sheet, 14, 0, "Allergens: milk.");
}

const typed = { states: "freezing point", as: "typed" } as const;

/** Worked examples, drinks, ratios and other sheets that are no list of ingredients. */
export const writtenOut: readonly Layout[] = [
  { name: "worked example", language: "en", build: workedExample },
  {
    ...{ name: "Messreihe", language: "de" },
    build: (kit) =>
      solutionRows(kit, addSheet(kit.marked.book, "Messreihe"), {
        ...{ top: 0, left: 1, constant: "Kf Wasser (K·kg/mol)" },
        headings: [
          ...(["Gelöster Stoff", "Einwaage (g)", "Wasser (g)", "Molmasse (g/mol)"] as const),
          "van-'t-Hoff-Faktor i",
          ...(["b (mol/kg)", "Gefrierpunktserniedrigung (K)", "Gefrierpunkt (°C)"] as const),
        ],
        proviso: (tolerance) => `Ideal gerechnet; Abweichung bis ${tolerance} K zugelassen.`,
      }),
  },
  { name: "Zuckerlösungen, Anteil zuerst", language: "de", build: ratios },
  { name: "bar list", language: "en", build: spirits },
  { name: "mix above its labels", language: "en", build: labelled },
  {
    ...{ name: "columns with a total first in sight", language: "en" },
    build: (kit) => {
      const sheet = addSheet(kit.marked.book, "Spring menu");
      const unitLabel = put(sheet, 0, 0, "Weights in grams");
      grid(kit, sheet, kit.make(3), {
        ...{
          top: 1,
          left: 0,
          recipesIn: "columns",
          unit: "g",
          corner: "",
          total: "Batch",
          unitLabel,
        },
        results: [typed, { states: "ice of mix", as: "typed", temperatureC: -18 }],
        ...{ allergens: "Contains", target: "Served as" },
      });
    },
  },
  {
    ...{ name: "Prozent in Zeilen", language: "de" },
    build: (kit) => {
      const sheet = addSheet(kit.marked.book, "Rezepturen");
      const unitLabel = put(sheet, 0, 0, "Rezepturen in % der Masse");
      grid(kit, sheet, kit.make(4).map(perHundred), {
        ...{
          top: 2,
          left: 0,
          recipesIn: "rows",
          unit: "%",
          corner: "Sorte",
          total: "Summe",
          unitLabel,
        },
        ...{ results: [typed], allergens: "Allergene/Hinweise" },
      });
    },
  },
];
