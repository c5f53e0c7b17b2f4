import { a1, addSheet, put, putRow, shown, span, type Spot } from "../book";
import { nameTarget, note, tell, type Kit, type Layout } from "../kit";
import { markRecipe, say, sumOf } from "../layouts/parts";
import { input } from "../page";
import { called, columnOf } from "./hand";

/** Temperatures of a cabinet down the page, the recipe that is in it at their right. */
function cabinet(kit: Kit): void {
  const { marked, random } = kit;
  const sheet = addSheet(marked.book, "Vitrine");
  put(sheet, 0, 0, "Vitrine im Laden");
  const days = putRow(sheet, 2, 0, ["Datum", "morgens in °C", "abends in °C"]);
  const rows = Array.from({ length: 12 }, (_, day) =>
    putRow(sheet, 3 + day, 0, [
      `${day + 1}. Juni`,
      ...[1, 2].map(() => shown(-random.whole(24, 34) / 2, "0.0")),
    ]),
  );
  put(sheet, 15, 0, "Mittel");
  [1, 2].forEach((column) => {
    const spots = columnOf(rows, column);
    put(sheet, 15, column, shown(`=AVERAGE(${span(spots)})`, "0.0"));
    const heading = days[column]!;
    marked.numberColumns.push({ spots, heading, total: null, kind: "temperature" });
  });
  const made = called(kit.make(1)[0]!, { Zucker: "Haushaltszucker", Salz: "Speisesalz" });
  put(sheet, 0, 5, "Hausrezept");
  put(sheet, 0, 6, made.title);
  const heads = putRow(sheet, 2, 5, ["Zutaten", "g", "Anmerkung"]);
  const lines = made.names.map((name, index) =>
    putRow(sheet, 3 + index, 5, [name, made.grams[index]]),
  );
  note(kit, sheet, 4, 7, "frisch vom Markt");
  const [names, amounts] = [columnOf(lines, 0), columnOf(lines, 1)];
  const row = 3 + lines.length;
  put(sheet, row, 5, "Summe");
  const total = sumOf(kit, sheet, { row, column: 6 }, amounts);
  const amountLabel = heads[1]!;
  const recipe = markRecipe(kit, made, { names, amounts, unit: "g", amountLabel, total });
  const temperatureC = random.pick([-11, -13, -15]);
  const place = { row: row + 2, column: 5 };
  const words = { label: "Ausgabetemperatur (°C)", bare: "Ausgabetemperatur" };
  const temperature = input(kit, sheet, place, { ...words, value: temperatureC });
  const ice = { temperature, temperatureC, as: "formula", percent: "format" } as const;
  let next = say(sheet, recipe, { row: row + 3, column: 5 }, [
    { label: "Gefrierpunkt (°C)", states: "freezing point", as: "formula" },
    { label: "Gefrierpunktserniedrigung (K)", states: "depression", as: "formula" },
    { label: "vom Wasser gefroren bei der Ausgabe", states: "ice of water", ...ice },
    { label: "Eis in der Mischung bei der Ausgabe", states: "ice of mix", ...ice },
    { label: "Wassermenge (g)", states: "water", as: "typed", decimals: 0 },
  ]);
  nameTarget(sheet, recipe, { row: next++, column: 5, label: "Angeboten als" });
  tell(kit, sheet, recipe, { row: next + 1, column: 5, as: "pair" });
  recipe.flags.push(spirits(kit));
}

const SPIRITS = [
  ["Obstbrand 40 %", 40],
  ["Likör 25 %", 25],
  ["Wodka 37,5 %", 37.5],
] as const;

/** What is poured over the ice, the strength last; gives the warning under it. */
function spirits(kit: Kit): Spot {
  const { marked, random } = kit;
  const sheet = addSheet(marked.book, "Zum Übergießen");
  putRow(sheet, 0, 0, ["Schnaps", "Alkohol (g)", "Schuss (g)", "Alkohol (% vol)"]);
  SPIRITS.forEach(([name, strength], index) => {
    const row = 1 + index;
    put(sheet, row, 0, name);
    const [grams, abv] = putRow(sheet, row, 2, [random.whole(15, 30), strength]) as [Spot, Spot];
    const content = `=RIME.ABVTOMASSFRACTION(${a1(abv)})*${a1(grams)}`;
    const alcohol = put(sheet, row, 1, shown(content, "0.0"));
    marked.alcohols.push({ grams, abv, alcohol });
  });
  return put(sheet, 5, 0, "Enthält Alkohol: nicht für Kinder, Schwangere und wer noch fährt.");
}

/** Sheets from behind the counter. */
export const counters: readonly Layout[] = [
  { name: "Vitrine links, Hausrezept rechts", language: "de", build: cabinet },
];
