import { addSheet, fixed, put, putRow, shown, span, type CorpusSheet, type Spot } from "../book";
import { nameTarget, note, tell, type Kit } from "../kit";
import { markRecipe, say, sumOf } from "../layouts/parts";
import { inUnit } from "../list";
import type { MarkedRecipe } from "../marks";
import { input } from "../page";
import { perHundred, type MadeRecipe } from "../recipes";
import { columnOf, stillMet } from "../kitchens/hand";
import { jars } from "../kitchens/jars";
import { beside, block } from "./lines";
import { listed } from "./listed";

const ROLES: readonly (readonly [RegExp, string])[] = [
  [/^Wasser|kaffee/i, "Wasserphase"],
  [/zucker|dextrose|sirup|saccharose|fruktose|honig/i, "Süßung"],
  [/milch|sahne|joghurt/i, "Milchphase"],
  [/säure|saft/i, "Frucht, Säure"],
];

const roleOf = (name: string): string | undefined =>
  ROLES.find(([pattern]) => pattern.test(name))?.[1];

/** Total solids, and what it is to be. */
function solidsAndAim(sheet: CorpusSheet, recipe: MarkedRecipe, next: number): void {
  const lines = `${span(recipe.names)},${span(recipe.amounts)}`;
  const solids = shown(`=RIME.COMPONENT(${lines},"solids")`, "0.0%");
  putRow(sheet, next, 1, ["Trockensubstanz (m/m)", solids]);
  nameTarget(sheet, recipe, { row: next + 1, column: 1, label: "Zielprodukt" });
}

/** What the formulation is like, under the list. */
function assess(kit: Kit, recipe: MarkedRecipe, row: number): number {
  const sheet = kit.marked.book.sheets[0]!;
  const temperatureC = kit.random.pick([-10, -14, -18]);
  const words = { label: "Prüftemperatur (°C)", bare: "Prüftemperatur", value: temperatureC };
  const temperature = input(kit, sheet, { row, column: 1 }, words);
  const ice = { temperature, temperatureC, as: "formula", percent: "format" } as const;
  const next = say(sheet, recipe, { row: row + 1, column: 1 }, [
    { label: "Beginn des Gefrierens (°C)", states: "freezing point", as: "formula" },
    { label: "Absenkung des Gefrierpunkts (K)", states: "depression", as: "typed" },
    { label: "Vom Wasser gefroren bei Prüftemperatur", states: "ice of water", ...ice },
    { label: "Eis in der Gesamtmasse bei Prüftemperatur", states: "ice of mix", ...ice },
    { label: "Zuckergehalt (m/m)", states: "sugar share", as: "typed", percent: "format" },
    {
      ...{ label: "Zucker bezogen auf 100 g Wasser (g)", decimals: 1 },
      ...{ states: "sugar per 100 g water", as: "typed" },
    },
    { label: "Gelöste Stoffe in 100 g Masse (g)", states: "dissolved", as: "typed", decimals: 1 },
  ]);
  solidsAndAim(sheet, recipe, next);
  return next + 3;
}

/** The list of the formulation: role, raw material, share, grams for a batch. */
function formulation(kit: Kit, made: MadeRecipe, batch: Spot): MarkedRecipe {
  const sheet = kit.marked.book.sheets[0]!;
  const { heads, names, amounts, total, row } = listed(kit, sheet, made, {
    ...{ top: 3, left: 0, name: 1, amount: 2, sum: "Kontrolle", format: "0.0%" },
    headings: ["Funktion", "Rohstoff", "Anteil (m/m)", "Ansatz (g)"],
    line: (at) => [
      ...[roleOf(made.names[at]!), made.names[at]],
      shown(inUnit(made.grams[at]!, "fraction"), "0.0%"),
    ],
  });
  const plan = { column: 3, heading: heads[3]!, fixed: [batch], format: "0.0" };
  const alsoAmounts = beside(kit, amounts, plan, (amount) => `=${fixed(batch)}*${amount}`);
  sumOf(kit, sheet, { row, column: 3 }, alsoAmounts, "0.0");
  kit.marked.numberColumns.push({ spots: amounts, heading: heads[2]!, total, kind: "fraction" });
  return markRecipe(kit, made, {
    ...{ names, amounts, alsoAmounts, unit: "fraction", amountLabel: heads[2]!, total },
  });
}

const OWN = ["Aroniadirektsaft Versuch 3", "Quittenmark eingekocht"];

/** Raw materials by their specification, and a trial mix with them. */
function trial(kit: Kit): void {
  const sheet = addSheet(kit.marked.book, "Rohstoffe");
  put(sheet, 0, 0, "Eigene Rohstoffe, g je 100 g laut Spezifikation");
  const headings = ["name", "Zucker", "Wasser", "Fett", "Eiweiß", "inert", "Allergene", "Quelle"];
  const own = jars(
    ...[kit, sheet, { row: 1, column: 0 }],
    ...[{ headings, items: OWN, none: "keine", source: "Spezifikation" }],
  );
  put(sheet, 6, 0, "Vorversuch mit eigenen Rohstoffen");
  putRow(sheet, 7, 0, ["Rohstoff", "Einwaage (g)"]);
  const rows = block(sheet, { row: 8, column: 0 }, [
    [OWN[0], 10 * kit.random.whole(20, 35)],
    ...[
      [OWN[1], 150],
      ["Wasser", 10 * kit.random.whole(15, 25)],
      ["Saccharose", 40],
    ],
  ]);
  put(sheet, 12, 0, "Summe");
  sumOf(kit, sheet, { row: 12, column: 1 }, columnOf(rows, 1));
  const lines = [0, 1].map((at) => span(columnOf(rows, at))).join(",");
  const call = shown(`=RIME.FREEZINGPOINT(${lines},${own})`, "0.00");
  putRow(sheet, 13, 0, ["Beginn des Gefrierens (°C)", call]);
}

/** A formulation in shares of one, its check at the foot, raw materials on a second sheet. */
export function rezeptur(kit: Kit): void {
  const { marked, random } = kit;
  const sheet = addSheet(marked.book, "Rezeptur");
  const made = stillMet(perHundred(kit.make(1)[0]!));
  putRow(sheet, 0, 0, ["Studienarbeit Speiseeis", made.title]);
  const words = { label: "Ansatz im Technikum (g)", bare: "Ansatz im Technikum" };
  const value = random.pick([800, 1500, 4000]);
  const batch = input(kit, sheet, { row: 1, column: 0 }, { ...words, value });
  const recipe = formulation(kit, made, batch);
  const next = assess(kit, recipe, recipe.total!.row + 2);
  const free = tell(kit, sheet, recipe, { row: next, column: 1, as: "pair" });
  note(kit, sheet, free + 1, 1, "Doppelbestimmung der Trockensubstanz steht noch aus.");
  trial(kit);
}
