import { addSheet, put, putRow, shown, span, type Spot } from "../book";
import { grid } from "../grid";
import { nameTarget, note, tell, type Kit, type Layout } from "../kit";
import { input } from "../page";
import { markRecipe, say, sumOf } from "./parts";

const WEEK = ["Mo", "Di", "Mi", "Do", "Fr", "Sa", "So"];

/** A week of temperatures, and the week's recipe with remarks between its lines. */
function week(kit: Kit): void {
  const { random, marked } = kit;
  const sheet = addSheet(marked.book, "KW 23");
  putRow(sheet, 0, 0, ["Truhe, °C", ...WEEK, "Mittel"]);
  ["früh (°C)", "mittags (°C)", "abends (°C)"].forEach((label, index) => {
    const heading = put(sheet, 1 + index, 0, label);
    const spots = WEEK.map((_, day) =>
      put(sheet, 1 + index, 1 + day, shown(-random.whole(31, 42) / 2, "0.0")),
    );
    put(sheet, 1 + index, 8, shown(`=AVERAGE(${span(spots)})`, "0.0"));
    marked.numberColumns.push({ spots, heading, total: null, kind: "temperature" });
  });
  const made = kit.make(1)[0]!;
  put(sheet, 6, 0, `Eis der Woche: ${made.title}`);
  const temperatureC = random.pick([-11, -13, -15]);
  const temperature = input(
    kit,
    sheet,
    { row: 7, column: 0 },
    {
      ...{ label: "Ausgabe bei (°C)", bare: "Ausgabe bei", value: temperatureC },
    },
  );
  const heads = putRow(sheet, 9, 0, ["Zutat", "Menge", "Einheit"]);
  let row = 10;
  const lines = made.names.map((name, index) => {
    const cells = putRow(sheet, row++, 0, [name, made.grams[index], "g"]);
    if (index === 1) note(kit, sheet, row++, 0, "  → langsam einrühren, 10 min quellen lassen");
    return cells;
  });
  const [names, amounts, unitCells] = [0, 1, 2].map((at) => lines.map((cells) => cells[at]!)) as [
    ...[Spot[], Spot[], Spot[]],
  ];
  put(sheet, row, 0, "Summe");
  put(sheet, row, 2, "g");
  const total = sumOf(kit, sheet, { row, column: 1 }, amounts);
  const amountLabel = heads[1]!;
  const recipe = markRecipe(kit, made, {
    names,
    amounts,
    unitCells,
    unit: "g",
    amountLabel,
    total,
  });
  const at = { temperature, temperatureC, percent: "format", as: "formula" } as const;
  const next = say(sheet, recipe, { row: 10, column: 4 }, [
    { label: "Gefrierpunkt (°C)", states: "freezing point", as: "formula" },
    { label: "Wasser gesamt (g)", states: "water", as: "formula", format: "0" },
    { label: "gefrorener Anteil des Wassers bei Ausgabe", states: "ice of water", ...at },
    { label: "Eisanteil der Mischung bei Ausgabe", states: "ice of mix", ...at },
  ]);
  nameTarget(sheet, recipe, { row: next + 1, column: 4, label: "Serviervorgabe" });
  tell(kit, sheet, recipe, { row: row + 2, column: 0, as: "sentence" });
}

/** What the scale wrote down, line by line, as a file of values. */
function scaleLog(kit: Kit): void {
  const { random, marked } = kit;
  const sheet = addSheet(marked.book, "Waage");
  const made = kit.make(1)[0]!;
  putRow(sheet, 0, 0, ["Wiegeprotokoll", made.title]);
  putRow(sheet, 1, 0, ["Charge", `B-${random.whole(100, 999)}`]);
  const heads = putRow(sheet, 3, 0, ["Pos.", "Zeit", "Artikel", "Netto (kg)", "Behälter"]);
  const lines = made.names.map((name, index) =>
    putRow(sheet, 4 + index, 0, [
      ...[index + 1, `9:${10 + 3 * index}`, name, made.grams[index]! / 1000],
      random.pick(["Eimer", "Schüssel", undefined]),
    ]),
  );
  const row = 4 + lines.length;
  const [names, amounts] = [2, 3].map((at) => lines.map((cells) => cells[at]!)) as [Spot[], Spot[]];
  put(sheet, row, 2, "Gesamt");
  const total = sumOf(kit, sheet, { row, column: 3 }, amounts);
  const recipe = markRecipe(kit, made, {
    ...{ names, amounts, unit: "kg", amountLabel: heads[3]!, total },
  });
  let next = say(sheet, recipe, { row: row + 2, column: 2 }, [
    { label: "Gefrierpunkt (°C)", states: "freezing point", as: "typed" },
    { label: "Zucker in der Mischung (%)", states: "sugar share", as: "typed" },
    {
      label: "Eis in der Mischung bei −18 °C (%)",
      states: "ice of mix",
      as: "typed",
      temperatureC: -18,
    },
  ]);
  nameTarget(sheet, recipe, { row: next++, column: 2, label: "Ziel" });
  tell(kit, sheet, recipe, { row: next + 1, column: 2, as: "sentence" });
}

/** Several kinds beside each other as a file of values. */
function kinds(kit: Kit): void {
  const sheet = addSheet(kit.marked.book, "Sorten");
  const unitLabel = put(sheet, 0, 0, "Sortenliste Sommer, alle Mengen in g");
  grid(kit, sheet, kit.make(3), {
    ...{ top: 2, left: 0, recipesIn: "columns", unit: "g", corner: "Zutat", total: "Summe" },
    results: [
      { states: "freezing point", as: "typed" },
      { states: "depression", as: "typed", wording: 1 },
      { states: "ice of water", as: "typed", temperatureC: -12 },
    ],
    ...{ allergens: "Allergene, Hinweise", target: "Angeboten als", unitLabel },
  });
}

/** Logs of a week and of a scale; files of values. */
export const logs: readonly Layout[] = [
  { name: "Eis der Woche mit Truhe", language: "de", build: week },
  { name: "Wiegeprotokoll als Werte", language: "de", isCsv: true, build: scaleLog },
  { name: "Sortenliste als Werte", language: "de", isCsv: true, build: kinds },
];
