import { a1, addSheet, put, putRow, shown, span, type CorpusSheet, type Spot } from "../book";
import { tellIn, type Voice } from "../caterers/words";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { called } from "../kitchens/hand";
import { markRecipe, say, sumOf, type Said } from "../layouts/parts";
import { inUnit } from "../list";
import { beside, listed } from "../newcomers/words";
import type { MadeRecipe } from "../recipes";
import { isAlcoholic, madeOf, temperatures, upTo } from "../strollers/words";
import { usualPrice } from "../unseen/shared";
import { sideTable, under } from "./words";

const VOICE: Voice = {
  lead: "Auf den Aushang: enthält",
  honey: "Mit Honig gesüßt, daher nichts für Kinder unter 12 Monaten.",
  alcohol: "Mit Alkohol, daher nichts für Kinder, Schwangere und alle, die noch fahren.",
  nuts: "Mit ganzen Nüssen, daher Erstickungsgefahr für Kinder unter 5 Jahren.",
  egg: "Mit rohem Eigelb, daher auf 71 °C erhitzen oder pasteurisiertes kaufen.",
};

const SAID: readonly Said[] = [
  { label: "fängt an zu gefrieren bei", inCell: "°C", states: "freezing point", as: "formula" },
  { label: "das liegt unter reinem Wasser um", inCell: "K", states: "depression", as: "typed" },
  {
    ...{ label: "Wasser in der ganzen Masse", inCell: "g" },
    ...{ states: "water", as: "typed", decimals: 0 },
  },
  {
    ...{ label: "gelöst in diesem Wasser", inCell: "g" },
    ...{ states: "dissolved", as: "typed", decimals: 0 },
  },
  {
    ...{ label: "Eis in der Masse bei −15 °C", inCell: "%" },
    ...{ states: "ice of mix", as: "typed", temperatureC: -15, decimals: 0 },
  },
];

/** One recipe, its totals above its lines; gives what it costs and the next free row. */
function gericht(kit: Kit, sheet: CorpusSheet, made: MadeRecipe, row: number) {
  put(sheet, row, 0, made.title.toUpperCase());
  const { heads, names, amounts, end } = listed(
    sheet,
    made,
    { row: row + 2, column: 0 },
    {
      heads: ["Ware", "kg", "€ je kg", "€"],
      cells: (item, grams, index) => {
        const price = usualPrice(kit.random, made.lines[index]!.en);
        return [item, shown(inUnit(grams, "kg"), "0.000"), shown(price, "0.00")];
      },
    },
  );
  const costs = beside(kit, heads[3]!, amounts, {
    ...{ sheet, format: "0.00" },
    content: (spot) => `=${a1(spot)}*${a1({ ...spot, column: 2 })}`,
  });
  put(sheet, row + 1, 0, "alles zusammen");
  const total = sumOf(kit, sheet, { row: row + 1, column: 1 }, amounts, "0.000");
  const cost = sumOf(kit, sheet, { row: row + 1, column: 3 }, costs, "0.00");
  const cells = { names, amounts, amountLabel: heads[1]!, total, unit: "kg" } as const;
  const recipe = markRecipe(kit, made, cells);
  const next = say(sheet, recipe, { row: row + 2, column: 5 }, SAID);
  nameTarget(sheet, recipe, { row: next, column: 5, label: "soll werden" });
  const told = tellIn(sheet, recipe, { row: end, column: 0 }, VOICE);
  return { cost, end: Math.max(told, next + 1) + 2 };
}

const DUTY = [
  ...[
    ["Mo", "Lena, Can", "Spülen"],
    ["Di", "Mia, Ole", "Kühlschrank"],
  ],
  ...[
    ["Do", "Tim, Ayla", "Abwiegen"],
    ["Fr", "Jo, Greta", "Ausgabe"],
  ],
];

/** Three recipes one below the other, what they cost on top, the duties at the right. */
function einkaufKlasse(kit: Kit): void {
  const sheet = addSheet(kit.marked.book, "Eiswoche");
  put(sheet, 0, 0, "Hauswirtschaft Kl. 8, Eiswoche: Rezepte und Einkauf");
  const words = { Zucker: "Kristallzucker", Wasser: "Leitungswasser", Honig: "Blütenhonig" };
  const mades = madeOf(kit, 3, (made) => !isAlcoholic(made));
  let row = 8;
  const costs: Spot[] = mades.map((each) => {
    const { cost, end } = gericht(kit, sheet, called(upTo(each, 2500), words), row);
    row = end;
    return cost;
  });
  putRow(sheet, 2, 0, ["Was kostet was?", "€"]);
  const copies = costs.map((cost, index) => {
    put(sheet, 3 + index, 0, mades[index]!.title);
    return put(sheet, 3 + index, 1, shown(`=${a1(cost)}`, "0.00"));
  });
  put(sheet, 6, 0, "Kasse gesamt");
  put(sheet, 6, 1, shown(`=SUM(${span(copies)})`, "0.00"));
  kit.marked.sums.push({ spot: { ...copies[0]!, row: 6 }, parts: copies });
  const heads = sideTable(
    sheet,
    [2, 9],
    ["Tag", "Wer", "Dienst", "Kühlschrank (°C)"],
    DUTY.map((cells) => [...cells, kit.random.whole(3, 6)]),
  );
  temperatures(kit, heads[3]!, under(heads[3]!, DUTY.length));
  note(kit, sheet, 8, 9, "Bons abheften, Pfand zurück in die Kasse.");
}

/** Home economics. */
export const einkaufKlassen: readonly Layout[] = [
  { name: "Hauswirtschaft, Eiswoche mit Einkauf", language: "de", build: einkaufKlasse },
];
