import { addSheet, fixed, put, putRow, type CorpusSheet, type Spot } from "../book";
import { nameTarget, note, tell, type Kit, type Layout } from "../kit";
import { called } from "../kitchens/hand";
import { markRecipe, say, sumOf, type Said } from "../layouts/parts";
import type { MarkedRecipe } from "../marks";
import { input } from "../page";
import type { MadeRecipe } from "../recipes";
import { beside, lines, under } from "../strangers/zeilen";
import { groups } from "./gruppen";

/** What each thing is there for, as the teacher says it. */
const PURPOSE: readonly (readonly [RegExp, string])[] = [
  [/^Wasser|[Mm]ilch$|Kaffee$/, "wird zum großen Teil Eis"],
  [/[Zz]ucker|Saccharose|Dextrose|Fruktose|Laktose|it$|sirup|Honig/, "süßt und hält weich"],
  [/^Kakao/, "gibt Geschmack und etwas Bitteres"],
  [/Sahne|Eigelb|Kokosmilch|Inulin|pulver$/, "macht cremig"],
  [/[Ss]aft$|säure/, "gibt Säure"],
  [/nüsse|Pistazien|flocken|raspel|kekse|Stücke/, "kommt erst zum Schluss hinein"],
  [/ vol$|Wodka|Rum/, "bleibt flüssig"],
  [/[Jj]oghurt/, "bringt Wasser, Milchfett und Säure"],
];

const purposeOf = (name: string): string =>
  PURPOSE.find(([pattern]) => pattern.test(name))?.[1] ?? "für den Geschmack";

interface People {
  readonly here: Spot;
  readonly home: Spot;
}

/** Amount, unit and name, and what it takes at home. */
function list(kit: Kit, sheet: CorpusSheet, made: MadeRecipe, { here, home }: People) {
  const heads = putRow(sheet, 8, 0, ["Wir nehmen", "Einheit", "Zutat", "Wozu", "daheim (g)"]);
  const cells = lines(sheet, { row: 9, column: 0 }, made, (name, grams) => [
    ...[grams, "g", name, purposeOf(name)],
  ]);
  const [amounts, unitCells, names] = cells as [Spot[], Spot[], Spot[]];
  const formula = (cell: string) => `=${cell}/${fixed(here)}*${fixed(home)}`;
  const plan = { heading: heads[4]!, formula, fixed: [here, home], format: "0" };
  const alsoAmounts = beside(kit, amounts, plan);
  const total = under(kit, amounts);
  putRow(sheet, total.row, 1, ["g", "Alles zusammen"]);
  sumOf(kit, sheet, { row: total.row, column: 4 }, alsoAmounts, "0");
  const amountLabel = heads[0]!;
  const parts = { names, amounts, alsoAmounts, unitCells, amountLabel, total };
  return markRecipe(kit, made, { ...parts, unit: "g" });
}

/** What happens in the cold; the share of ice for the class's own freezer. */
const cold = (temperature: Spot, temperatureC: number): Said[] => [
  { label: "Die ersten Kristalle kommen bei (°C)", states: "freezing point", as: "formula" },
  { label: "Wasser in allen Zutaten (g)", states: "water", as: "formula", format: "0" },
  {
    ...{ label: "Zucker auf je 100 g Wasser (g)", states: "sugar per 100 g water" },
    ...{ as: "typed", decimals: 1 },
  },
  {
    ...{ label: "Vom Wasser ist in unserem Gefrierfach Eis (%)", states: "ice of water" },
    ...{ as: "formula", format: "0.0", temperature, temperatureC },
  },
  {
    ...{ label: "Eis in der ganzen Masse bei −18 °C (%)", states: "ice of mix" },
    ...{ as: "typed", temperatureC: -18 },
  },
];

function below(kit: Kit, sheet: CorpusSheet, recipe: MarkedRecipe, freezer: Spot, is: number) {
  const row = recipe.total!.row + 2;
  put(sheet, row, 0, "Was in der Kälte geschieht");
  let next = say(sheet, recipe, { row: row + 1, column: 2 }, cold(freezer, is));
  nameTarget(sheet, recipe, { row: next++, column: 2, label: "So wollen wir es servieren" });
  next = tell(kit, sheet, recipe, { row: next + 1, column: 0, as: "sentence" });
  note(kit, sheet, next + 1, 0, "Bitte saubere Gläser und ein Geschirrtuch mitbringen.");
}

/** What everybody takes home: the recipe of the evening, and what it takes for fewer. */
function handout(kit: Kit): void {
  const { marked, random } = kit;
  const sheet = addSheet(marked.book, "Handzettel");
  const made = called(kit.make(1)[0]!, { Zucker: "Weißzucker", Kokosraspel: "Kokosflocken" });
  put(sheet, 0, 0, "Gefrorenes selbst gemacht, zweiter Abend");
  put(sheet, 1, 0, made.title);
  const [, , here] = putRow(sheet, 3, 0, ["Personen im Kurs", undefined, random.whole(10, 14)]);
  const [, , home] = putRow(sheet, 4, 0, ["Personen daheim", undefined, random.whole(3, 6)]);
  const temperatureC = random.pick([-15, -16, -17, -19]);
  const words = { label: "Unser Gefrierfach (°C)", bare: "Unser Gefrierfach" };
  const freezer = input(kit, sheet, { row: 5, column: 1 }, { ...words, value: temperatureC });
  const recipe = list(kit, sheet, made, { here: here!, home: home! });
  below(kit, sheet, recipe, freezer, temperatureC);
  put(sheet, 6, 1, "(ganz hinten gemessen, nicht an der Tür)");
}

/** Sheets of a woman who teaches evening classes. */
export const kurs: readonly Layout[] = [
  { name: "Kochkurs, Handzettel für daheim", language: "de", build: handout },
  { name: "Kochkurs, Kontrollblatt der Gruppen", language: "de", build: groups },
];
