import { a1, addSheet, put, putRow, shown, type CorpusSheet, type Spot } from "../book";
import { tellIn, type Voice } from "../caterers/words";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { called, columnOf, strip } from "../kitchens/hand";
import { markRecipe, sumOf, type Said } from "../layouts/parts";
import type { MarkedRecipe } from "../marks";
import { beside, listed } from "../newcomers/words";
import type { MadeRecipe } from "../recipes";
import { upTo } from "../strollers/words";
import { goodsOf, numbersUnder, priceList, readings, table } from "./words";

const VOICE: Voice = {
  lead: "Schild am Buffet: enthält",
  honey: "Honig drin, für Kinder unter 12 Monaten tabu.",
  alcohol: "Alkohol drin, nichts für Kinder, Schwangere und Fahrer.",
  nuts: "Ganze Nüsse drin, Kinder unter 5 können sich verschlucken.",
  egg: "Rohes Eigelb drin, auf 71 °C bringen oder pasteurisiertes verwenden.",
};

const SAID: readonly Said[] = [
  { label: "Gefrierpunkt °C", states: "freezing point", as: "typed", decimals: 1 },
  { label: "Wasser g", states: "water", as: "typed", decimals: 0 },
  { label: "gelöst g", states: "dissolved", as: "formula", format: "0" },
  {
    label: "Wasser gefroren bei −18 °C in %",
    ...{ states: "ice of water", as: "typed", temperatureC: -18, decimals: 0 },
  },
];

interface Dish {
  readonly recipe: MarkedRecipe;
  readonly cost: Spot;
  readonly end: number;
}

/** A recipe: its name over the list, its answers along a row beside it. */
function dish(kit: Kit, sheet: CorpusSheet, made: MadeRecipe, row: number, lookup: string): Dish {
  putRow(sheet, row, 0, [made.title, "für 25 Gäste"]);
  const { heads, names, amounts, rows, end } = listed(
    sheet,
    made,
    { row: row + 1, column: 0 },
    {
      heads: ["Zutat", "Menge", "Einh.", "Wareneinsatz €"],
      cells: (item, grams) => [item, grams, "g"],
    },
  );
  const costs = beside(kit, heads[3]!, names, {
    ...{ sheet, format: "0.00" },
    content: (spot, at) => `=VLOOKUP(${a1(spot)},${lookup},4,FALSE)*${a1(amounts[at]!)}/1000`,
  });
  put(sheet, end, 0, "zusammen");
  const total = sumOf(kit, sheet, { row: end, column: 1 }, amounts);
  put(sheet, end, 2, "g");
  const cost = sumOf(kit, sheet, { row: end, column: 3 }, costs, "0.00");
  const unitCells = columnOf(rows, 2);
  const cells = { names, amounts, unitCells, unit: "g", amountLabel: heads[1]!, total } as const;
  const recipe = markRecipe(kit, made, cells);
  strip(sheet, recipe, { row: row + 1, column: 5 }, SAID);
  nameTarget(sheet, recipe, { row: row + 4, column: 5, label: "Beschaffenheit" });
  return { recipe, cost, end: tellIn(sheet, recipe, { row: end + 1, column: 0 }, VOICE) };
}

/** What a guest costs. */
function angebot(kit: Kit, dishes: readonly Dish[], from: string): void {
  const sheet = addSheet(kit.marked.book, "Angebot");
  put(sheet, 0, 0, "Eisbuffet, Angebot für 25 Gäste");
  const heads = putRow(sheet, 2, 0, ["Sorte", "Wareneinsatz €", "je Gast €"]);
  const costs = dishes.map(({ recipe, cost }, index) => {
    put(sheet, 3 + index, 0, recipe.made.title);
    return put(sheet, 3 + index, 1, shown(`=${from}!${a1(cost)}`, "0.00"));
  });
  const each = beside(kit, heads[2]!, costs, {
    ...{ sheet, format: "0.00" },
    content: (spot) => `=${a1(spot)}/25`,
  });
  const row = 3 + dishes.length;
  put(sheet, row, 0, "Buffet");
  sumOf(kit, sheet, { row, column: 1 }, costs, "0.00");
  sumOf(kit, sheet, { row, column: 2 }, each, "0.00");
  const cold = readings(kit, 3, [-20, -16]);
  const places = ["Abfahrt", "Ankunft", "Ausgabe"];
  const { heads: headings, columns } = table(
    sheet,
    { row: row + 3, column: 0 },
    ["Thermobox letztes Mal", "°C"],
    places.map((place, index) => [place, cold[index]]),
  );
  numbersUnder(kit, headings[1]!, columns[1]!, "temperature");
  note(kit, sheet, row + 8, 0, "Anfahrt bis 20 km ist im Preis, darüber extra.");
}

/** Purchase prices, three flavours under each other, the offer. */
function partyservice(kit: Kit): void {
  const words = { Zucker: "Haushaltszucker", Zitronensaft: "Zitronensaft, frisch" };
  const mades = kit.make(3).map((made) => called(upTo(made, 2500), words));
  const prices = addSheet(kit.marked.book, "Einkauf");
  const heads = ["Ware", "Gebinde kg", "Gebinde €", "€ je kg"];
  const { lookup, end } = priceList(kit, prices, { row: 0, column: 0 }, heads, goodsOf(mades));
  note(kit, prices, end + 1, 0, "Großmarkt, Rechnung vom Mai.");
  const sheet = addSheet(kit.marked.book, "Sorten");
  let row = 0;
  const dishes = mades.map((made) => {
    const done = dish(kit, sheet, made, row, lookup);
    row = done.end + 2;
    return done;
  });
  angebot(kit, dishes, sheet.name);
}

/** A caterer with a buffet of ices. */
export const partyservices: readonly Layout[] = [
  { name: "Partyservice, Einkaufspreise und drei Sorten", language: "de", build: partyservice },
];
