import { addSheet, put, putRow, span, type CorpusSheet, type Spot } from "../book";
import { nameTarget, tell, type Kit } from "../kit";
import { called, columnOf, stillMet } from "../kitchens/hand";
import { markRecipe, say, type Said } from "../layouts/parts";
import { perHundred, type MadeRecipe } from "../recipes";
import { lines } from "../strangers/zeilen";

const CAME_OUT = [
  ["cremig, aber sehr süß", "gleich so lassen", "Rand hart, Mitte gut"],
  ["nach 10 Minuten draußen gut", "sofort zu löffeln", "erst nach 15 Minuten"],
] as const;

const SAID: readonly Said[] = [
  { label: "Gefrierpunkt (°C)", states: "freezing point", as: "typed", decimals: 2 },
  {
    label: "Zucker auf 100 g Wasser (g)",
    states: "sugar per 100 g water",
    as: "typed",
    decimals: 1,
  },
  {
    ...{ label: "Eis bei −16 °C, Prozent vom Wasser", states: "ice of water" },
    ...{ as: "typed", temperatureC: -16 },
  },
  {
    ...{ label: "Eis bei −16 °C, Prozent vom Ganzen", states: "ice of mix" },
    ...{ as: "typed", temperatureC: -16 },
  },
];

interface Attempt {
  readonly made: MadeRecipe;
  readonly top: number;
  readonly number: number;
}

/** What came out, as he noted it. */
function cameOut({ random, marked }: Kit, sheet: CorpusSheet, row: number): void {
  const rows = [
    ["Geschmack", random.pick(CAME_OUT[0])],
    ["Löffelprobe", random.pick(CAME_OUT[1])],
    ["Gefrierfach (°C)", -random.whole(31, 37) / 2],
    ["fest nach Stunden", random.whole(7, 14) / 2],
  ].map((contents, index) => putRow(sheet, row + index, 6, contents));
  marked.notes.push(columnOf(rows, 1)[0]!);
}

/** One attempt: per cents before the names, what is worked out and what came out at the right. */
function attempt(kit: Kit, sheet: CorpusSheet, { made, top, number }: Attempt): number {
  const day = 9 * number + kit.random.whole(-6, 1);
  putRow(sheet, top, 0, [`Versuch ${number}`, made.title, `${day}. August`]);
  const [amountLabel] = putRow(sheet, top + 1, 0, [
    ...["Prozent", "Zutat", undefined, "gerechnet", undefined, undefined, "herausgekommen"],
  ]);
  const place = { row: top + 2, column: 0 };
  const cells = lines(sheet, place, made, (name, share) => [share, name]);
  const [amounts, names] = cells as [Spot[], Spot[]];
  const row = top + 2 + names.length;
  const total = put(sheet, row, 0, `=ROUND(SUM(${span(amounts)}),1)`);
  put(sheet, row, 1, "Summe");
  const recipe = markRecipe(kit, made, {
    ...{ names, amounts, unit: "%", amountLabel: amountLabel!, total },
  });
  const next = say(sheet, recipe, { row: top + 2, column: 3 }, SAID);
  nameTarget(sheet, recipe, { row: next, column: 3, label: "Wunsch" });
  cameOut(kit, sheet, top + 2);
  const free = Math.max(row, next) + 1;
  return tell(kit, sheet, recipe, { row: free, column: 0, as: "sentence" }) + 1;
}

/** Three attempts of a summer, as the tablet has saved them. */
export function attempts(kit: Kit): void {
  const sheet = addSheet(kit.marked.book, "Versuche");
  let top = 0;
  kit.make(3).forEach((each, index) => {
    const made = called(stillMet(perHundred(each)), { Zucker: "Haushaltszucker" });
    top = attempt(kit, sheet, { made, top, number: index + 1 });
  });
}
