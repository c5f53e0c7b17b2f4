import { a1, addSheet, fixed, put, putRow, shown, type CorpusSheet, type Spot } from "../book";
import { tellIn, type Voice } from "../caterers/words";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { called, columnOf, strip } from "../kitchens/hand";
import { hundred } from "../layouts/marking";
import { markRecipe, sumOf, type Said } from "../layouts/parts";
import { inUnit } from "../list";
import type { MarkedRecipe } from "../marks";
import { beside, listed } from "../newcomers/words";
import { input } from "../page";
import type { MadeRecipe } from "../recipes";
import { temperatures } from "../strollers/words";

const VOICE: Voice = {
  lead: "Etikettentext, hervorzuheben:",
  honey: "Honig: für Säuglinge unter 12 Monaten ungeeignet.",
  alcohol: "Alkohol: nicht an Kinder, Schwangere, Fahrende.",
  nuts: "Ganze Nüsse: Kleinkinder unter 5 Jahren können daran ersticken.",
  egg: "Rohes Eigelb: Erhitzung auf 71 °C nachweisen oder pasteurisierte Ware.",
};

const HEADS = ["Rohstoff", "Massenanteil", "Soll (kg)", "Silo/Regal", "Charge Rohstoff", "gewogen"];

/** Fractions of the mix and what the kettle gets of each. */
function rezeptur(kit: Kit, sheet: CorpusSheet, made: MadeRecipe): MarkedRecipe {
  const { random } = kit;
  const kettle = input(
    kit,
    sheet,
    { row: 2, column: 4 },
    { label: "Kesselfüllung (kg)", bare: "Kesselfüllung", value: random.pick([80, 120, 150, 200]) },
  );
  const list = listed(
    sheet,
    made,
    { row: 9, column: 0 },
    {
      heads: HEADS,
      cells: (item, grams) => [
        ...[item, shown(inUnit(grams, "fraction"), "0.000"), undefined],
        ...[random.pick(["R2", "R5", "K1"]), `L${random.whole(4000, 7999)}`, "□"],
      ],
    },
  );
  const { heads, names, amounts, end } = list;
  put(sheet, end, 0, "zusammen");
  const total = sumOf(kit, sheet, { row: end, column: 1 }, amounts, "0.000");
  const alsoAmounts = beside(kit, heads[2]!, amounts, {
    ...{ sheet, format: "0.00", fixed: [kettle] },
    content: (spot) => `=${a1(spot)}*${fixed(kettle)}`,
  });
  sumOf(kit, sheet, { row: end, column: 2 }, alsoAmounts, "0.00");
  const cells = { names, amounts, alsoAmounts, total, amountLabel: heads[1]! } as const;
  const recipe = markRecipe(kit, made, { ...cells, unit: "fraction" });
  tellIn(sheet, recipe, { row: end + 2, column: 0 }, VOICE);
  note(kit, sheet, end + 3, 0, "Rückstellmuster zu 200 g ins Regal links, Deckel beschriften.");
  return recipe;
}

/** What the mix has to be like, over the list. */
const SAID: readonly Said[] = [
  { label: "Gefrierbeginn °C", states: "freezing point", as: "formula", format: "0.00" },
  { label: "Erniedrigung K", states: "depression", as: "typed" },
  { label: "Zucker in der Masse %", states: "sugar share", as: "typed", decimals: 1 },
  { label: "Zucker g/100 g Wasser", states: "sugar per 100 g water", as: "typed", decimals: 1 },
  {
    label: "Wasser gefroren bei −5,5 °C in %",
    ...{ states: "ice of water", as: "typed", temperatureC: -5.5, decimals: 0 },
  },
  {
    label: "Eis in der Masse bei −20 °C in %",
    ...{ states: "ice of mix", as: "typed", temperatureC: -20, decimals: 0 },
  },
];

const STEPS: readonly (readonly [string, number, number])[] = [
  ["Vormischen", 400, 480],
  ["Pasteur, Ende", 840, 860],
  ["nach Homogenisator", 680, 720],
  ["Reifetank, Beginn", 42, 58],
  ["Reifetank, Ende", 22, 38],
  ["Auslauf Freezer", -62, -50],
  ["Härtetunnel, Kern", -224, -188],
];

/** The steps of the line with their temperatures, and who was on duty. */
function verlauf(kit: Kit, sheet: CorpusSheet): void {
  const { random } = kit;
  put(sheet, 8, 8, "Verlauf");
  const heads = putRow(sheet, 9, 8, ["Schritt", "Uhrzeit", "gelesen (°C)", "Kürzel"]);
  const rows = STEPS.map(([step, from, to], index) => {
    const time = `${6 + index}:${random.pick(["05", "20", "45"])}`;
    const read = shown(random.whole(from, to) / 10, "0.0");
    return putRow(sheet, 10 + index, 8, [step, time, read, random.pick(["wi", "ko", "se"])]);
  });
  temperatures(kit, heads[2]!, columnOf(rows, 2));
}

const PACKED = ["Becher 125 ml", "Schale 900 ml", "Wanne 5 l"];

/** What was filled. */
function abgefuellt(kit: Kit, sheet: CorpusSheet): void {
  putRow(sheet, 18, 8, ["Abgefüllt", "Stück", "Ausschuss (Stück)"]);
  const rows = PACKED.map((word, index) => {
    const counts = [kit.random.whole(30, 240), kit.random.whole(0, 5)];
    return putRow(sheet, 19 + index, 8, [word, ...counts]);
  });
  put(sheet, 22, 8, "Summe");
  const total = (at: number): Spot =>
    sumOf(kit, sheet, { row: 22, column: 8 + at }, columnOf(rows, at));
  total(1);
  total(2);
}

/** A batch in a plant, the list in mass fractions. */
function chargenblatt(kit: Kit): void {
  const own = { Wasser: "Trinkwasser", Zucker: "Raffinade", Magermilchpulver: "MMP" };
  const made = called(hundred(kit.make(1)[0]!), own);
  const sheet = addSheet(kit.marked.book, "Charge");
  putRow(sheet, 0, 0, ["CHARGENBLATT", undefined, undefined, undefined, "Linie 2"]);
  putRow(sheet, 2, 0, ["Sorte", made.title]);
  putRow(sheet, 3, 0, ["Charge", `E-${kit.random.whole(1000, 9999)}`]);
  const recipe = rezeptur(kit, sheet, made);
  strip(sheet, recipe, { row: 5, column: 0 }, SAID);
  nameTarget(sheet, recipe, { row: 3, column: 4, label: "Freigabe als" });
  verlauf(kit, sheet);
  abgefuellt(kit, sheet);
}

/** A plant with a line of its own. */
export const chargenblaetter: readonly Layout[] = [
  { name: "Chargenblatt in Massenanteilen mit Verlauf", language: "de", build: chargenblatt },
];
