import { a1, addSheet, fixed, put, putRow, shown, type CorpusSheet, type Spot } from "../book";
import { tellIn, type Voice } from "../caterers/words";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { called } from "../kitchens/hand";
import { markRecipe, say, sumOf, type Said } from "../layouts/parts";
import { inUnit } from "../list";
import type { MarkedRecipe } from "../marks";
import { beside, listed } from "../newcomers/words";
import { input } from "../page";
import { ofAlcohol, upTo } from "../strollers/words";
import { aside, asTemperatures, priceFor, readings } from "./words";

const VOICE: Voice = {
  lead: "Etikett, Allergene:",
  honey: "Etikett: Honig, ungeeignet für Kinder unter 12 Monaten.",
  alcohol: "Etikett: Alkohol, nichts für Kinder, Schwangere, Autofahrer.",
  nuts: "Etikett: ganze Nüsse, Erstickungsgefahr unter 5 Jahren.",
  egg: "Rohes Eigelb: 71 °C im Pasteur oder gleich pasteurisiert kaufen.",
};

const OWN = {
  Zucker: "Rübenzucker",
  Pistazien: "Pistazienkerne",
  Kakaopulver: "Backkakao",
  "Spirituose 40 % vol": "Wodka 40 %",
};

const SAID: readonly Said[] = [
  { label: "Gefrierbeginn °C", states: "freezing point", as: "formula", format: "0.0" },
  { label: "Absenkung K", states: "depression", as: "typed" },
  { label: "Wasser g", states: "water", as: "typed", decimals: 0 },
  {
    label: "Wasser ausgefroren bei −18 °C, %",
    ...{ states: "ice of water", as: "typed", temperatureC: -18, decimals: 0 },
  },
  {
    label: "Eis in der Gesamtmasse bei −18 °C, %",
    ...{ states: "ice of mix", as: "typed", temperatureC: -18, decimals: 0 },
  },
];

interface Costed {
  readonly recipe: MarkedRecipe;
  readonly cost: Spot;
  readonly next: number;
}

/** Raw materials: price first, then the kilograms, then the euros. */
function material(kit: Kit, sheet: CorpusSheet): Costed {
  const made = called(upTo(kit.make(1)[0]!, 8000), OWN);
  putRow(sheet, 0, 0, ["Kalkulation", `Stieleis „${made.title}“`]);
  put(sheet, 2, 0, "1. Material");
  const { heads, rows, names, amounts, end } = listed(
    sheet,
    made,
    { row: 3, column: 0 },
    {
      heads: ["Pos", "Rohware", "EK €/kg", "Einsatz kg", "Betrag €"],
      cells: (item, grams, index) => [
        ...[`1.${index + 1}`, item, shown(priceFor(kit, made.lines[index]!.en), "0.00")],
        shown(inUnit(grams, "kg"), "0.000"),
      ],
      ...{ name: 1, amount: 3 },
    },
  );
  const costs = beside(kit, heads[4]!, amounts, {
    ...{ sheet, format: "0.00" },
    content: (spot) => `=${a1(rows[spot.row - 4]![2]!)}*${a1(spot)}`,
  });
  const row = end + 1;
  put(sheet, row, 1, "Summe 1");
  const total = sumOf(kit, sheet, { row, column: 3 }, amounts, "0.000");
  const cost = sumOf(kit, sheet, { row, column: 4 }, costs, "0.00");
  const cells = { names, amounts, unit: "kg", total, amountLabel: heads[3]! } as const;
  return { recipe: markRecipe(kit, made, cells), cost, next: row + 2 };
}

/** Sticks, work and energy, then the price of one piece. */
function pieces(kit: Kit, sheet: CorpusSheet, { recipe, cost, next }: Costed): number {
  const { random } = kit;
  put(sheet, next, 0, "2. Stück");
  const given = (down: number, bare: string, unit: string, value: number): Spot =>
    input(
      kit,
      sheet,
      { row: next + down, column: 1 },
      {
        ...{ label: `${bare} (${unit})`, bare, value, format: unit === "g" ? "0" : "0.00" },
      },
    );
  const mould = given(1, "Füllgewicht", "g", random.pick([65, 70, 80]));
  const stick = given(2, "Stiel und Hülle", "€", random.whole(6, 14) / 100);
  const wage = given(3, "Lohn und Strom für den Ansatz", "€", random.whole(40, 90));
  const worked = (down: number, label: string, formula: string, format = "0.00"): Spot =>
    putRow(sheet, next + down, 1, [label, shown(formula, format)])[1]!;
  const count = worked(4, "Stück aus dem Ansatz", `=1000*${a1(recipe.total!)}/${a1(mould)}`, "0");
  const each = `=(${a1(cost)}+${a1(wage)})/${a1(count)}+${a1(stick)}`;
  const own = worked(5, "Selbstkosten je Stück (€)", each);
  put(sheet, next + 7, 0, "3. Verkauf");
  const heads = putRow(sheet, next + 8, 1, [
    "Abnehmer",
    "Preis netto €",
    "Spanne €",
    "Stück / Woche",
  ]);
  const prices = ["Freibad", "Hofladen", "Kino"].map((buyer, index) => {
    const price = shown(random.whole(30, 44) / 20, "0.00");
    const cells = [buyer, price, undefined, 10 * random.whole(6, 30)];
    return putRow(sheet, next + 9 + index, 1, cells)[1]!;
  });
  beside(kit, heads[2]!, prices, {
    ...{ sheet, format: "0.00", fixed: [own] },
    content: (spot) => `=${a1(spot)}-${fixed(own)}`,
  });
  return next + 13;
}

/** What a piece on a stick costs its makers. */
function kalkulation(kit: Kit): void {
  const sheet = addSheet(kit.marked.book, "Kalk");
  const costed = material(kit, sheet);
  const { recipe } = costed;
  const end = pieces(kit, sheet, costed);
  put(sheet, 2, 6, "Technik");
  const said = [...SAID, ...ofAlcohol(recipe.made, "reiner Alkohol g")];
  const next = say(sheet, recipe, { row: 3, column: 6 }, said);
  nameTarget(sheet, recipe, { row: next, column: 6, label: "Vorgabe" });
  tellIn(sheet, recipe, { row: end, column: 0 }, VOICE);
  const minutes = [0, 10, 20, 30].map((minute) => [minute]);
  const heads = aside(
    sheet,
    { row: 14, column: 6 },
    ["Min. im Solebad", "Sole °C", "Kern °C"],
    minutes,
  );
  readings(kit, sheet, heads[1]!, { count: minutes.length, from: -30, to: -27 });
  const cores = [3, -4, -11, -17].map((about, index) => {
    const core = about + kit.random.whole(-9, 9) / 10;
    return put(sheet, 15 + index, 8, shown(Number(core.toFixed(1)), "0.0"));
  });
  asTemperatures(kit, heads[2]!, cores);
  note(kit, sheet, end + 2, 0, "EK laut letzter Lieferscheine, Skonto nicht abgezogen.");
}

/** A small maker of ice on sticks. */
export const stieleise: readonly Layout[] = [
  { name: "Stieleismanufaktur, Kalkulation bis zum Stück", language: "de", build: kalkulation },
];
