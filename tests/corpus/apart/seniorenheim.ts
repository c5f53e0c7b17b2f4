import { a1, addSheet, fixed, put, putRow, shown, type CorpusSheet, type Spot } from "../book";
import { tellIn, type Voice } from "../caterers/words";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { called } from "../kitchens/hand";
import { markRecipe, say, sumOf } from "../layouts/parts";
import { upTo } from "../strollers/words";
import { hundredth, readings, soberOnes } from "./words";

const VOICE: Voice = {
  lead: "Aushang Allergene:",
  honey: "Aushang: mit Honig, Enkel unter 12 Monaten bekommen keinen.",
  alcohol: "Aushang: mit Alkohol, nicht für Kinder, Schwangere oder wer noch fährt.",
  nuts: "Aushang: ganze Nüsse, Verschlucken möglich, nicht für Kinder unter 5 Jahren.",
  egg: "Küche: rohes Eigelb, auf 71 °C erhitzen oder pasteurisiertes verwenden.",
};

const OWN = {
  ...{ Zucker: "Haushaltszucker", Wasser: "Leitungswasser", Himbeeren: "TK-Himbeeren" },
  ...{ Zitronensaft: "Saft von Zitronen", Honig: "Bienenhonig" },
};

/** The houses and how many eat there. */
const HOUSES = ["Haus Linde", "Haus Buche", "Haus Ahorn", "Tagespflege"];

const TOP = 4;

/** What one house gets: its people, every ingredient by them, and the sum; gives the cells. */
function house(
  kit: Kit,
  sheet: CorpusSheet,
  [name, row]: readonly [string, number],
  amounts: readonly Spot[],
): Spot[] {
  const base: Spot = { sheet: sheet.name, row: TOP + 1, column: 1 };
  const [heading, people] = putRow(sheet, row, 0, [name, kit.random.whole(9, 38)]) as [Spot, Spot];
  const cells = amounts.map((spot) => {
    const formula = `=${a1(spot)}/${fixed(base)}*${fixed(people)}`;
    return put(sheet, row, spot.column, shown(formula, "0"));
  });
  kit.marked.formulaColumns.push({ spots: cells, heading, fixed: [base, people] });
  const last = { row, column: amounts.at(-1)!.column + 1 };
  return [people, ...cells, sumOf(kit, sheet, last, cells, "0")];
}

/** The recipe across, the houses under it. */
function across(kit: Kit, sheet: CorpusSheet) {
  const made = called(upTo(soberOnes(kit, 1)[0]!, 1500), OWN);
  put(sheet, 0, 0, `Nachtisch am Sonntag: ${made.title}`);
  putRow(sheet, TOP, 0, ["Für wen", "Personen"]);
  const names = putRow(sheet, TOP, 2, made.names);
  const last = 2 + names.length;
  put(sheet, TOP, last, "Masse");
  const [amountLabel] = putRow(sheet, TOP + 1, 0, ["Grundrezept in g", 20]);
  const amounts = putRow(sheet, TOP + 1, 2, made.grams);
  const total = sumOf(kit, sheet, { row: TOP + 1, column: last }, amounts);
  const rows = HOUSES.map((name, index) => house(kit, sheet, [name, TOP + 2 + index], amounts));
  const end = TOP + 2 + rows.length;
  put(sheet, end, 0, "Küche gesamt");
  rows[0]!.forEach((_, at) => {
    const parts = rows.map((cells) => cells[at]!);
    sumOf(kit, sheet, { row: end, column: 1 + at }, parts, "0");
  });
  const alsoAmounts = rows.flatMap((cells) => cells.slice(1, -1));
  const lines = {
    names,
    amounts,
    alsoAmounts,
    amountLabel: amountLabel!,
    total,
    unit: "g",
  } as const;
  return { recipe: markRecipe(kit, made, lines), end };
}

/** A week of puddings around the ice. */
function menu(sheet: CorpusSheet, row: number): void {
  putRow(sheet, row, 5, ["Speiseplan", "Nachtisch", "Ausgabe"]);
  ["Grießbrei", "Kompott", "Pudding", "Obst", "Quarkspeise", "Kuchen", "Eis, siehe oben"].forEach(
    (dish, index) => {
      const day = ["Mo", "Di", "Mi", "Do", "Fr", "Sa", "So"][index];
      putRow(sheet, row + 1 + index, 5, [day, dish, index < 5 ? "11.45 Uhr" : "12.15 Uhr"]);
    },
  );
}

function seniorenheim(kit: Kit): void {
  const sheet = addSheet(kit.marked.book, "Sonntag");
  const { recipe, end } = across(kit, sheet);
  const [label, cart] = putRow(sheet, 1, 0, ["Temperatur im Ausgabewagen in °C", -11]);
  kit.marked.inputs.push({ label: label!, value: cart!, bare: "Temperatur im Ausgabewagen" });
  const served = { temperature: cart!, temperatureC: -11 };
  const next = say(sheet, recipe, { row: end + 2, column: 0 }, [
    { label: "Beginnt zu frieren bei (°C)", states: "freezing point", as: "typed", decimals: 1 },
    { label: "Wasser im Grundrezept (g)", states: "water", as: "formula", format: "0" },
    { label: "Gelöste Stoffe im Grundrezept (g)", states: "dissolved", as: "typed", decimals: 0 },
    { label: "Zuckeranteil (%)", states: "sugar share", as: "typed" },
    { label: "Wasser gefroren im Wagen (%)", states: "ice of water", as: "formula", ...served },
    {
      ...{ label: "Wasser gefroren in der Truhe bei −19 °C (%)", decimals: 0 },
      ...{ states: "ice of water", as: "typed", temperatureC: -19 },
    },
  ]);
  nameTarget(sheet, recipe, { row: next, column: 0, label: "Beschaffenheit" });
  tellIn(sheet, recipe, { row: 2, column: 0 }, VOICE);
  menu(sheet, end + 2);
  readings(
    kit,
    sheet,
    { row: end + 11, column: 0 },
    {
      heads: ["Truhe im Keller", "abgelesen in °C", "wer"],
      ...{ when: ["Do früh", "Fr früh", "Sa früh", "So früh"], tenths: [-213, -182] },
      rest: () => [kit.random.pick(["Küche", "Hausmeister"])],
    },
  );
  hundredth(
    kit,
    sheet,
    { row: end + 11, column: 5 },
    {
      heads: ["Umfrage, wie war das Eis?", "Stimmen in %"],
      ...{ items: ["gern wieder", "zu kalt", "zu süß", "keine Meinung"], total: "alle" },
    },
  );
  note(kit, sheet, end + 17, 0, "Eis zehn Minuten vor der Ausgabe aus der Truhe holen.");
}

/** The kitchen of a home for the elderly. */
export const seniorenheime: readonly Layout[] = [
  { name: "Seniorenheim, Zutaten quer und Häuser darunter", language: "de", build: seniorenheim },
];
