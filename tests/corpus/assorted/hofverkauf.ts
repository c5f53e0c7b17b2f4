import { addSheet, put, putRow, shown, type CorpusSheet, type Spot } from "../book";
import { tellIn, type Voice } from "../caterers/words";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { called, largestFirst } from "../kitchens/hand";
import { markRecipe, say, sumOf, type Said } from "../layouts/parts";
import { listed } from "../newcomers/words";
import type { MadeRecipe } from "../recipes";
import { aside, readings } from "./words";

const VOICE: Voice = {
  lead: "drin:",
  honey: "Honig → nix für Babys unter 12 Monaten.",
  alcohol: "Alkohol → nix für Kinder, Schwangere und Autofahrer.",
  nuts: "ganze Nüsse → unter 5 Jahren Erstickungsgefahr.",
  egg: "rohes Eigelb → auf 71 °C erhitzen oder pasteurisiertes kaufen.",
};

const OWN = {
  Zucker: "Haushaltszucker",
  Erdbeeren: "Erdbeeren frisch",
  Honig: "Blütenhonig",
  Haselnüsse: "Haselnusskerne",
  Himbeeren: "Himbeeren TK",
};

const said = (temperature: Spot, temperatureC: number): readonly Said[] => [
  { label: "friert ab (°C)", states: "freezing point", as: "formula", format: "0.0" },
  { label: "Wasser auf 100 g (g)", states: "water", as: "typed", decimals: 1 },
  {
    label: "Wasser als Eis, in der Wanne (%)",
    ...{ states: "ice of water", as: "formula", format: "0", temperature, temperatureC },
  },
  {
    label: "Eis je 100 g Masse, in der Wanne (g)",
    ...{ states: "ice of mix", as: "formula", format: "0", temperature, temperatureC },
  },
  {
    label: "Zuckerarten, Anteil der Masse (%)",
    ...{ states: "sugar share", as: "typed", decimals: 1 },
  },
];

interface Tray {
  readonly temperature: Spot;
  readonly temperatureC: number;
}

/** One kind with its own columns; gives the first row under it. */
function kind(kit: Kit, sheet: CorpusSheet, made: MadeRecipe, left: number, tray: Tray): number {
  put(sheet, 4, left, made.title);
  const { heads, names, amounts, end } = listed(
    sheet,
    made,
    { row: 5, column: left },
    { heads: ["rein kommt", "%"], cells: (item, share) => [item, shown(share, "0.0")] },
  );
  const total = sumOf(kit, sheet, { row: end, column: left + 1 }, amounts, "0.0");
  put(sheet, end, left, "passt?");
  const recipe = markRecipe(kit, made, {
    names,
    amounts,
    unit: "%",
    amountLabel: heads[1]!,
    total,
  });
  kit.marked.numberColumns.push({ spots: amounts, heading: heads[1]!, total, kind: "per cent" });
  const plan = said(tray.temperature, tray.temperatureC);
  const next = say(sheet, recipe, { row: 13, column: left }, plan);
  nameTarget(sheet, recipe, { row: next, column: left, label: "Ziel" });
  return tellIn(sheet, recipe, { row: next + 1, column: left }, VOICE);
}

/** Three kinds beside each other over the rest of the week. */
function drei(kit: Kit): void {
  const sheet = addSheet(kit.marked.book, "Wanne");
  put(sheet, 0, 0, "Drei Sorten in der Wanne, diese Woche");
  const temperatureC = kit.random.pick([-11, -12, -13]);
  const [label, temperature] = putRow(sheet, 2, 0, ["Wanne steht auf (°C)", temperatureC]);
  kit.marked.inputs.push({ label: label!, value: temperature!, bare: "Wanne steht auf" });
  const tray = { temperature: temperature!, temperatureC };
  const mades = kit.make(3).map((made) => called(largestFirst(made), OWN));
  const ends = mades.map((made, index) => kind(kit, sheet, made, 3 * index, tray));
  const row = Math.max(...ends) + 1;
  const days = ["Di", "Mi", "Do", "Fr", "Sa", "So"];
  const heads = aside(
    sheet,
    { row, column: 0 },
    ["Tag", "Wanne mittags (°C)", undefined, "verkauft (Kugeln)", "Dienst"],
    days.map((day) => [
      ...[day, undefined, undefined, kit.random.whole(40, 260)],
      kit.random.pick(["Oma", "Jule", "Emre"]),
    ]),
  );
  readings(kit, sheet, heads[1]!, { count: days.length, from: -14, to: -10 });
  aside(
    sheet,
    { row, column: 6 },
    ["geöffnet", "von", "bis"],
    [
      ...[
        ["Di–Fr", "13:00", "19:00"],
        ["Sa, So", "11:00", "20:00"],
      ],
    ],
  );
  note(kit, sheet, row + 8, 0, "Montag zu, Maschine entkalken!");
}

/** A family that sells ice from its yard. */
export const hofverkaeufe: readonly Layout[] = [
  { name: "Hofverkauf, drei Sorten nebeneinander in Prozent", language: "de", build: drei },
];
