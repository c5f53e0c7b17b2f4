import { a1, addSheet, put, putRow, shown, span, type CorpusSheet, type Spot } from "../book";
import { tellIn, type Voice } from "../caterers/words";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { called, columnOf, perKilogram } from "../kitchens/hand";
import { markRecipe, say, sumOf, type Said } from "../layouts/parts";
import type { MarkedRecipe } from "../marks";
import { beside } from "../newcomers/words";
import { input } from "../page";
import type { MadeRecipe } from "../recipes";
import { resultAt, type ResultPlan } from "../results";
import { ofAlcohol } from "../strollers/words";
import { readings } from "./words";

const VOICE: Voice = {
  lead: "Verkostung, Allergene:",
  honey: "Mit Honig: kein Probieren unter 12 Monaten.",
  alcohol: "Mit Alkohol: nicht für Kinder, in der Schwangerschaft oder vor der Fahrt.",
  nuts: "Mit ganzen Nüssen: Verschlucken möglich, nicht unter 5 Jahren.",
  egg: "Mit rohem Eigelb: Masse auf 71 °C halten oder pasteurisiertes verwenden.",
};

const OWN: readonly Said[] = [
  { label: "Wasser, gesamt (g)", states: "water", as: "typed", decimals: 0 },
  { label: "Gelöstes (g)", states: "dissolved", as: "formula", format: "0" },
];

const ROWS: readonly (readonly [string, ResultPlan])[] = [
  ["Gefrierpunkt (°C)", { states: "freezing point", as: "formula", format: "0.0" }],
  ["Gefrierpunktserniedrigung (K)", { states: "depression", as: "typed" }],
  [
    "Eis bei −15 °C, Anteil am Wasser (%)",
    { states: "ice of water", as: "typed", temperatureC: -15, decimals: 0 },
  ],
  ["Zucker im Ganzen (%)", { states: "sugar share", as: "typed", decimals: 1 }],
];

interface Page {
  readonly name: string;
  readonly recipe: MarkedRecipe;
}

/** A recipe on its sheet, the grams shown with their unit, beside them what goes into a cup. */
function ownSheet(kit: Kit, made: MadeRecipe, name: string): Page {
  const sheet = addSheet(kit.marked.book, name);
  putRow(sheet, 0, 0, [name, made.title]);
  const cup = input(
    kit,
    sheet,
    { row: 1, column: 0 },
    {
      ...{ label: "Probebecher (g)", bare: "Probebecher", value: kit.random.pick([40, 50]) },
    },
  );
  const heads = putRow(sheet, 3, 0, ["Zutat", "1 kg Masse", "davon je Becher (g)", "Ablauf"]);
  const steps = ["vorlegen", "einrühren", "zugeben", "zugeben", "zuletzt", "zuletzt"];
  const rows = made.names.map((each, at) =>
    putRow(sheet, 4 + at, 0, [each, shown(made.grams[at]!, '0" g"'), undefined, steps[at]]),
  );
  const [names, amounts] = [columnOf(rows, 0), columnOf(rows, 1)];
  const end = 4 + rows.length;
  const total = sumOf(kit, sheet, { row: end, column: 1 }, amounts, '0" g"');
  put(sheet, end, 0, "Masse");
  const [sum, size] = [total, cup].map((spot) => a1(spot).replace(/(\D+)(\d+)/, "$$$1$$$2"));
  const parts = beside(kit, heads[2]!, amounts, {
    ...{ sheet, format: "0.0", fixed: [total, cup] },
    content: (spot) => `=${a1(spot)}/${sum}*${size}`,
  });
  const cells = { names, amounts, alsoAmounts: parts, total, amountLabel: heads[1]! } as const;
  const recipe = markRecipe(kit, made, { ...cells, unit: "g" });
  const said = [...OWN, ...ofAlcohol(made, "Alkohol, rein (g)")];
  const next = say(sheet, recipe, { row: end + 2, column: 0 }, said);
  tellIn(sheet, recipe, { row: next, column: 0 }, VOICE);
  note(kit, sheet, end + 7, 0, kit.random.pick(["Bild im Ordner.", "Noch einmal kosten lassen."]));
  return { name, recipe };
}

/** All recipes beside each other on the first sheet, what is known of each under its name. */
function overview(kit: Kit, sheet: CorpusSheet, pages: readonly Page[]): void {
  put(sheet, 0, 0, "Versuchsküche, Stand der Massen");
  putRow(sheet, 2, 0, ["Blatt", ...pages.map(({ name }) => name)]);
  putRow(sheet, 3, 0, ["Masse", ...pages.map(({ recipe }) => recipe.made.title)]);
  const labels = ROWS.map(([words], at): Spot => put(sheet, 4 + at, 0, words));
  put(sheet, 8, 0, "Zielbiss");
  put(sheet, 9, 0, "Ansatz im Blatt (g)");
  pages.forEach(({ name, recipe }, index) => {
    const column = 1 + index;
    const lines = `'${name}'!${span(recipe.names)},'${name}'!${span(recipe.amounts)}`;
    ROWS.forEach(([, plan], at) =>
      resultAt(sheet, recipe, labels[at]!, { row: 4 + at, column }, plan, () => lines),
    );
    nameTarget(sheet, recipe, { row: 8, column });
    put(sheet, 9, column, shown(`='${name}'!${a1(recipe.total!)}`, "0"));
  });
  putRow(sheet, 11, 0, ["Versuchsfroster", undefined, "gelesen von"]);
  const freezer = { heading: "Anzeige (°C)", count: 3, from: -17, to: -14 };
  readings(kit, sheet, { row: 11, column: 1 }, freezer);
  ["8 Uhr", "12 Uhr", "16 Uhr"].forEach((hour, at) => put(sheet, 12 + at, 0, hour));
  ["Jule", "Jule", "Sven"].forEach((who, at) => put(sheet, 12 + at, 2, who));
}

/** An overview and a sheet for each of its recipes. */
function versuchskueche(kit: Kit): void {
  const first = addSheet(kit.marked.book, "Stand");
  const words = { Zucker: "weißer Zucker", Himbeeren: "Himbeeren TK", Honig: "Bienenhonig" };
  const pages = kit
    .make(4)
    .map((made, at) => ownSheet(kit, called(perKilogram(made), words), `V ${31 + at}`));
  overview(kit, first, pages);
}

/** Where new ices are tried. */
export const versuchskuechen: readonly Layout[] = [
  {
    name: "Versuchsküche, Stand vorn und ein Blatt je Masse",
    language: "de",
    build: versuchskueche,
  },
];
