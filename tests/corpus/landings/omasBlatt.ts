import { addSheet, put, putRow, type CorpusSheet } from "../book";
import { tellIn, type Voice } from "../caterers/words";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { called, columnOf } from "../kitchens/hand";
import { markRecipe, say, sumOf, type Place, type Said } from "../layouts/parts";
import type { MadeRecipe } from "../recipes";
import { temperatures } from "../strollers/words";
import { downward } from "./words";

const VOICE: Voice = {
  lead: "Drin ist:",
  honey: "Honig drin, nichts für Babys unter 12 Monaten.",
  alcohol: "Schnaps drin: nicht für die Kinder, nicht für Schwangere, nicht vor dem Heimfahren.",
  nuts: "Nüsse ganz, die Kleinen unter 5 könnten sich verschlucken.",
  egg: "Rohes Eigelb: auf 71 °C erhitzen oder das pasteurisierte nehmen.",
};

const FACTS: readonly Said[] = [
  { label: "fängt an zu frieren bei (°C)", states: "freezing point", as: "typed", decimals: 1 },
  { label: "Wasser darin, alles (g)", states: "water", as: "formula", format: "0" },
  {
    ...{ label: "bei −18 °C vom Wasser gefroren (%)", states: "ice of water" },
    ...{ as: "typed", temperatureC: -18, decimals: 0 },
  },
  { label: "Zucker in allem (%)", states: "sugar share", as: "typed", decimals: 0 },
];

/** One ice in its corner of the sheet. */
function corner(kit: Kit, sheet: CorpusSheet, made: MadeRecipe, { row, column }: Place): void {
  put(sheet, row, column, made.title);
  const amountLabel = put(sheet, row, column + 1, "g");
  const rows = made.names.map((name, index) =>
    putRow(sheet, row + 1 + index, column, [name, made.grams[index]]),
  );
  const [names, amounts] = [columnOf(rows, 0), columnOf(rows, 1)];
  const end = row + 1 + rows.length;
  put(sheet, end, column, "macht");
  const total = sumOf(kit, sheet, { row: end, column: column + 1 }, amounts);
  const recipe = markRecipe(kit, made, { names, amounts, total, amountLabel, unit: "g" });
  const said = say(sheet, recipe, { row: row + 9, column }, FACTS);
  nameTarget(sheet, recipe, { row: said, column, label: "isst sich wie" });
  tellIn(sheet, recipe, { row: row + 14, column }, VOICE);
}

/** Which drawer was how cold on which day. */
function drawers(kit: Kit, sheet: CorpusSheet): void {
  const heads = putRow(sheet, 1, 9, ["Gefrierschrank", "oben °C", "Mitte °C", "unten °C"]);
  downward(sheet, { row: 2, column: 9 }, ["1. Mai", "1. Juni", "1. Juli", "1. August"]);
  [10, 11, 12].forEach((column, at) => {
    const read = [0, 1, 2, 3].map(() => -17 - at - kit.random.whole(0, 1));
    temperatures(kit, heads[at + 1]!, downward(sheet, { row: 2, column }, read));
  });
}

/** Four ices, two beside each other and two under them. */
function omasBlatt(kit: Kit): void {
  const sheet = addSheet(kit.marked.book, "Eis daheim");
  put(sheet, 0, 0, "Eis, das bei uns alle mögen");
  const words = { Honig: "Blütenhonig", Haselnüsse: "Haselnusskerne", Vollmilch: "Milch 3,5 %" };
  kit.make(4).forEach((each, index) => {
    const made = called(each, words);
    const place = { row: index < 2 ? 2 : 19, column: index % 2 === 0 ? 0 : 4 };
    corner(kit, sheet, made, place);
  });
  drawers(kit, sheet);
  note(kit, sheet, 35, 0, "Die Maschine fasst ein Kilo, sonst in mehreren Gängen.");
}

/** A family's ices. */
export const omasBlaetter: readonly Layout[] = [
  { name: "Eis daheim, vier Ecken auf einem Blatt", language: "de", build: omasBlatt },
];
