import { addSheet, putRow } from "../book";
import type { Kit, Layout } from "../kit";
import { page } from "../page";
import { ENGLISH, GERMAN, packets, small } from "./packets";

/** The larder on a sheet of its own with a name; a recipe and a trial that use it. */
function larder(kit: Kit): void {
  const { random, marked } = kit;
  const sheet = addSheet(marked.book, "Trials");
  const shelf = addSheet(marked.book, "Shelf");
  putRow(shelf, 0, 0, ["Bought in, g per 100 g by the label"]);
  const items = ["market apple syrup", "corner shop pear base", "valley currant base"];
  const range = packets(kit, shelf, 2, { headings: ENGLISH, items, none: "none" });
  marked.book.names.push({ name: "OurShelf", refersTo: `Shelf!${range}`, sheet: null });
  const next = page(kit, sheet, kit.make(1)[0]!, {
    titleGap: 0,
    serving: ["Cabinet at (°C)", "Cabinet at"],
    list: {
      columns: ["amount", "unit", "name", "remark"],
      headings: { amount: "Take", unit: "Unit", name: "of", remark: "Remark" },
      ...{ unit: "g", total: "Total" },
    },
    results: {
      place: "right",
      plans: [
        { states: "freezing point", as: "formula" },
        { states: "water", as: "formula", format: "0" },
        { states: "ice of water", as: "formula", percent: "format" },
        { states: "ice of mix", as: "formula", percent: "format" },
      ],
    },
    ...{ tell: "sentence", target: "Meant for" },
  });
  const lines = items.map((item) => [item, random.whole(8, 30) * 10] as const);
  const all = [...lines, ["water", 400], ["sugar", 60]] as const;
  small(sheet, next + 1, ["Trial 7", "Grams", "Freezing point (°C)"], all, "OurShelf");
}

/** A recipe, and under it a trial with what the neighbours sell. */
function packetsBelow(kit: Kit): void {
  const { random, marked } = kit;
  const sheet = addSheet(marked.book, "Versuche");
  const next = page(kit, sheet, kit.make(1)[0]!, {
    titleGap: 0,
    list: {
      columns: ["number", "amount", "name"],
      headings: { number: "Nr.", amount: "Gramm", name: "Bestandteil" },
      ...{ unit: "g", total: "Summe" },
    },
    results: {
      place: "right",
      unitCell: true,
      plans: [
        { states: "freezing point", as: "typed", wording: 1 },
        { states: "alcohol", as: "typed", decimals: 1 },
        { states: "sugar share", as: "typed" },
      ],
    },
    ...{ tell: "sentence", target: "Vorgabe", note: "Darunter: Versuch mit Zugekauftem." },
  });
  const items = ["Hofladen-Quittenmus", "Dorfmühlen-Kompott"];
  const own = packets(kit, sheet, next + 7, { headings: GERMAN, items, none: "keine" });
  const lines = [
    [items[0]!, random.whole(20, 45) * 10],
    [items[1]!, 80],
    ["Wasser", 260],
  ] as const;
  small(sheet, next, ["Versuch", "Menge (g)", "Gefrierpunkt (°C)"], lines, own);
}

/** Sheets with what was bought in. */
export const larders: readonly Layout[] = [
  { name: "shelf by its name", language: "en", build: larder },
  { name: "Versuch mit Zugekauftem", language: "de", build: packetsBelow },
];
