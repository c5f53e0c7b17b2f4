import { addSheet, put, putRow, shown, type CorpusSheet, type Spot } from "../book";
import { tellIn, type Voice } from "../caterers/words";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { called, columnOf } from "../kitchens/hand";
import { markRecipe, say, sumOf, type Said } from "../layouts/parts";
import { inUnit } from "../list";
import type { MarkedRecipe } from "../marks";
import { listed } from "../newcomers/words";
import type { MadeRecipe } from "../recipes";
import { ofAlcohol, temperatures, upTo } from "../strollers/words";

const VOICE: Voice = {
  lead: "Schildchen:",
  honey: "mit Honig, Babys unter 12 Monaten bekommen keins.",
  alcohol: "mit Alkohol, nur für Erwachsene, nicht schwanger, nicht am Steuer.",
  nuts: "mit ganzen Nüssen, Erstickungsgefahr für Kinder unter 5 Jahren.",
  egg: "mit rohem Eigelb, Masse muss auf 71 °C oder pasteurisiertes Eigelb rein.",
};

/** What the two cases are kept at, and what is asked of a mix there. */
const SAID: readonly Said[] = [
  { label: "GP", inCell: "°C", states: "freezing point", as: "formula" },
  { label: "Δ zum Wasser", inCell: "K", states: "depression", as: "formula" },
  {
    ...{ label: "ausgefroren bei −11 °C (v. Wasser)", inCell: "%" },
    ...{ states: "ice of water", as: "typed", temperatureC: -11, decimals: 0 },
  },
  {
    ...{ label: "Eis bei −18 °C (v. d. ganzen Masse)", inCell: "%" },
    ...{ states: "ice of mix", as: "typed", temperatureC: -18, decimals: 0 },
  },
];

/** One mix in its block: kilograms with the unit behind, the sum over the lines. */
function block(kit: Kit, sheet: CorpusSheet, made: MadeRecipe, left: number): MarkedRecipe {
  put(sheet, 2, left, made.title.toUpperCase());
  const { random } = kit;
  const list = listed(
    sheet,
    made,
    { row: 4, column: left },
    {
      heads: ["Was", "Wie viel", undefined, "Steht wo"],
      cells: (item, grams) => [
        ...[item, shown(inUnit(grams, "kg"), "0.000"), "kg"],
        random.pick(["Kühlhaus", "Regal", "Keller", undefined]),
      ],
    },
  );
  const { heads, rows, names, amounts } = list;
  put(sheet, 3, left, "Wanne gesamt");
  const total = sumOf(kit, sheet, { row: 3, column: left + 1 }, amounts, "0.000");
  put(sheet, 3, left + 2, "kg");
  const unitCells = columnOf(rows, 2);
  const cells = { names, amounts, unitCells, total, amountLabel: heads[1]!, unit: "kg" } as const;
  return markRecipe(kit, made, cells);
}

/** The row under the longer of two lists. */
const below = (mades: readonly MadeRecipe[]): number =>
  6 + Math.max(...mades.map(({ names }) => names.length));

interface Case {
  readonly name: string;
  readonly mades: readonly MadeRecipe[];
}

/** A sheet for a display case, two mixes beside each other, answers below; gives the free row. */
function vitrine(kit: Kit, { name, mades }: Case) {
  const sheet = addSheet(kit.marked.book, name);
  put(sheet, 0, 0, `${name}, Rezepte je Wanne`);
  const row = below(mades);
  mades.forEach((made, index) => {
    const column = 5 * index;
    const recipe = block(kit, sheet, made, column);
    const said = [...SAID, ...ofAlcohol(made, "Alkohol rein", "g")];
    const next = say(sheet, recipe, { row, column }, said);
    nameTarget(sheet, recipe, { row: next, column, label: "Ziel" });
    tellIn(sheet, recipe, { row: row + 7, column }, VOICE);
  });
  return { sheet, row: row + 9 };
}

const DAYS = ["Mo", "Di", "Mi", "Do", "Fr", "Sa"];

/** The air in the case, morning and evening. */
function kontrolle(kit: Kit, sheet: CorpusSheet, top: number): void {
  put(sheet, top, 0, "Vitrinenkontrolle");
  const heads = putRow(sheet, top + 1, 0, ["Tag", "10 Uhr (°C)", "17 Uhr (°C)", "abgetaut"]);
  const read = () => shown(-kit.random.whole(104, 122) / 10, "0.0");
  const rows = DAYS.map((day, index) =>
    putRow(sheet, top + 2 + index, 0, [day, read(), read(), index === 2 ? "ja" : undefined]),
  );
  [1, 2].forEach((at) => temperatures(kit, heads[at]!, columnOf(rows, at)));
}

/** Who is behind the counter, in hours. */
function dienstplan(kit: Kit, sheet: CorpusSheet, top: number): void {
  put(sheet, top, 0, "Dienst an der Theke, Stunden");
  putRow(sheet, top + 1, 0, [undefined, ...DAYS, "Woche"]);
  const rows = ["Früh", "Spät", "Aushilfe"].map((shift, index) => {
    const row = top + 2 + index;
    put(sheet, row, 0, shift);
    const hours: Spot[] = DAYS.map((_, day) =>
      put(sheet, row, 1 + day, kit.random.pick([4, 5, 6, 6.5])),
    );
    return [sumOf(kit, sheet, { row, column: 7 }, hours)];
  });
  put(sheet, top + 5, 0, "alle");
  sumOf(kit, sheet, { row: top + 5, column: 7 }, columnOf(rows, 0));
}

/** Two display cases with two mixes each. */
function vitrinen(kit: Kit): void {
  const own = { Zucker: "Haushaltszucker", Vollmilch: "Vollmilch 3,5 %", Salz: "Tafelsalz" };
  const mades = kit.make(4).map((made) => called(upTo(made, 5000), own));
  const left = vitrine(kit, { name: "Vitrine Tür", mades: mades.slice(0, 2) });
  const right = vitrine(kit, { name: "Vitrine Fenster", mades: mades.slice(2) });
  kontrolle(kit, left.sheet, left.row);
  dienstplan(kit, right.sheet, right.row);
  note(kit, right.sheet, right.row + 7, 0, "Wer zuletzt geht, zieht die Rollos runter.");
}

/** A parlour with two display cases. */
export const vitrinenblaetter: readonly Layout[] = [
  { name: "zwei Vitrinen, je zwei Wannen nebeneinander", language: "de", build: vitrinen },
];
