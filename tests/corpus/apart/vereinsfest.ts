import { a1, addSheet, fixed, put, putRow, shown, type CorpusSheet, type Spot } from "../book";
import { tellIn, type Voice } from "../caterers/words";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { called } from "../kitchens/hand";
import { markRecipe, say, sumOf } from "../layouts/parts";
import type { MarkedRecipe } from "../marks";
import { beside, listed } from "../newcomers/words";
import { ofAlcohol } from "../strollers/words";
import { usualPrice } from "../unseen/shared";
import { readings } from "./words";

const VOICE: Voice = {
  lead: "Auf den Pappaufsteller: mit",
  honey: "Honig drin, nix für Babys unter 12 Monaten!",
  alcohol: "Alkohol drin, nix für Kinder, Schwangere und Fahrer!",
  nuts: "Ganze Nüsse drin, Erstickungsgefahr für Kinder unter 5 Jahren!",
  egg: "Rohes Eigelb drin, vorher auf 71 °C erhitzen oder pasteurisiertes nehmen!",
};

interface Sums {
  readonly recipe: MarkedRecipe;
  /** Sums of the grams and the money for the whole fête. */
  readonly whole: Spot;
  readonly money: Spot;
  readonly end: number;
}

/** One pot, all pots, what it costs. */
function pot(kit: Kit, sheet: CorpusSheet): Sums {
  const { random } = kit;
  const made = called(kit.make(1)[0]!, {
    ...{ Zucker: "Haushaltszucker", Erdbeeren: "frische Erdbeeren", Wasser: "Leitungswasser" },
    ...{ Walnüsse: "Walnusskerne", Haselnüsse: "Haselnusskerne" },
  });
  put(sheet, 0, 0, `Dorffest, Eisstand der Feuerwehrjugend: ${made.title}`);
  const [, pots] = putRow(sheet, 1, 0, ["Wie viele Töpfe?", random.whole(10, 20)]);
  const { heads, names, amounts, end } = listed(
    sheet,
    made,
    { row: 4, column: 0 },
    {
      heads: ["Was", "1 Topf (g)", "Alle Töpfe (g)", "€/kg", "Kostet (€)", "Wer besorgt's"],
      cells: (name, grams, index) => [
        ...[name, grams, undefined],
        ...[shown(usualPrice(random, made.lines[index]!.en), "0.00"), undefined],
        random.pick(["Moni", "Sepp", "Kathi", "liegt im Heim"]),
      ],
    },
  );
  const all = beside(kit, heads[2]!, amounts, {
    ...{ sheet, format: "0", fixed: [pots!] },
    content: (spot) => `=${a1(spot)}*${fixed(pots!)}`,
  });
  const costs = beside(kit, heads[4]!, all, {
    ...{ sheet, format: "0.00" },
    content: (spot) => `=${a1(spot)}*${a1({ ...spot, column: 3 })}/1000`,
  });
  put(sheet, 3, 0, "Summe");
  const total = sumOf(kit, sheet, { row: 3, column: 1 }, amounts);
  const whole = sumOf(kit, sheet, { row: 3, column: 2 }, all, "0");
  const money = sumOf(kit, sheet, { row: 3, column: 4 }, costs, "0.00");
  const lines = { names, amounts, alsoAmounts: all, amountLabel: heads[1]!, total } as const;
  return { recipe: markRecipe(kit, made, { ...lines, unit: "g" }), whole, money, end };
}

/** What a scoop costs, and how many have to be sold. */
function scoop(kit: Kit, sheet: CorpusSheet, { whole, money, end }: Sums): void {
  const { random, marked } = kit;
  const row = end + 1;
  put(sheet, row, 0, "— Kasse —");
  const [label, weight] = putRow(sheet, row + 1, 0, [
    "Eine Kugel wiegt (g)",
    random.pick([60, 65, 70]),
  ]);
  marked.inputs.push({ label: label!, value: weight!, bare: "Eine Kugel wiegt" });
  const line = (step: number, words: string, content: number | string, format: string): Spot =>
    putRow(sheet, row + step, 0, [words, shown(content, format)])[1]!;
  const cone = line(2, "Tüte und Serviette (€)", random.whole(6, 14) / 100, "0.00");
  const rent = line(3, "Leihgebühr Truhe (€)", random.pick([10, 12, 15]), "0.00");
  const price = line(4, "Wir verlangen (€)", 1.5, "0.00");
  const scoops = line(5, "Kugeln", `=${a1(whole)}/${a1(weight!)}`, "0");
  const each = `=(${a1(money)}+${a1(rent)})/${a1(scoops)}+${a1(cone)}`;
  const cost = line(6, "Eine Kugel kostet uns (€)", each, "0.00");
  line(
    7,
    "Für die Jugendkasse, wenn alles weggeht (€)",
    `=${a1(scoops)}*(${a1(price)}-${a1(cost)})`,
    "0.00",
  );
}

/** What is known of the ice, for those who ask. */
function facts(sheet: CorpusSheet, recipe: MarkedRecipe, row: number): void {
  put(sheet, row, 3, "— Für Neugierige —");
  const next = say(sheet, recipe, { row: row + 1, column: 3 }, [
    { label: "Fängt zu gefrieren an bei (°C)", states: "freezing point", as: "typed", decimals: 1 },
    { label: "Wasser je Topf (g)", states: "water", as: "formula", format: "0" },
    { label: "Gelöstes je Topf (g)", states: "dissolved", as: "typed", decimals: 0 },
    ...ofAlcohol(recipe.made, "Alkohol je Topf (g)"),
    {
      ...{ label: "So viel vom Wasser ist bei −12 °C Eis (%)", decimals: 0 },
      ...{ states: "ice of water", as: "typed", temperatureC: -12 },
    },
  ]);
  nameTarget(sheet, recipe, { row: next, column: 3, label: "Soll werden" });
}

const SHIFTS = ["10–12 Uhr", "12–14 Uhr", "14–16 Uhr", "16–18 Uhr", "18–20 Uhr"];

/** Who stands where, and what the chest freezer shows when they come. */
function shifts(kit: Kit, sheet: CorpusSheet): void {
  const { random } = kit;
  put(sheet, 0, 0, "Wer steht wann am Stand");
  const end = readings(
    kit,
    sheet,
    { row: 1, column: 0 },
    {
      heads: ["Schicht", "Truhe bei Übergabe (°C)", "Kugeln", "Kasse", "Kugeln verkauft"],
      ...{ when: SHIFTS, tenths: [-168, -118] },
      rest: () => [
        ...[random.pick(["Jonas", "Leni"]), random.pick(["Moni", "Sepp"]), random.whole(2, 13)],
      ],
    },
  );
  const sold = SHIFTS.map((_, index) => ({ sheet: sheet.name, row: 2 + index, column: 4 }));
  put(sheet, end, 0, "Tag");
  sumOf(kit, sheet, { row: end, column: 4 }, sold);
  note(kit, sheet, end + 2, 0, "Wer seine Schicht tauscht, sagt Kathi Bescheid.");
}

function vereinsfest(kit: Kit): void {
  const sheet = addSheet(kit.marked.book, "Eis");
  const sums = pot(kit, sheet);
  tellIn(sheet, sums.recipe, { row: 2, column: 0 }, VOICE);
  scoop(kit, sheet, sums);
  facts(sheet, sums.recipe, sums.end + 1);
  shifts(kit, addSheet(kit.marked.book, "Schichten"));
}

/** A youth fire brigade's stall. */
export const vereinsfeste: readonly Layout[] = [
  {
    name: "Dorffest, Kalkulation und Schichtplan vom Eisstand",
    language: "de",
    build: vereinsfest,
  },
];
