import { a1, addSheet, put, putRow, shown, type CorpusSheet, type Spot } from "../book";
import { tellIn, type Voice } from "../caterers/words";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { called } from "../kitchens/hand";
import { markRecipe, say, sumOf, type Said } from "../layouts/parts";
import { input } from "../page";
import { withLines, type MadeRecipe } from "../recipes";
import { ofAlcohol } from "../strollers/words";

const VOICE: Voice = {
  lead: "There is",
  honey: "Sweetened with honey, so nothing for babies in their first year (under 12 months).",
  alcohol: "Boozy: contains alcohol, no children, no drivers, not when pregnant.",
  nuts: "Whole nuts inside: choking hazard for the under-5s.",
  egg: "Raw egg yolk: take the mix to 71 °C, or use pasteurised yolk.",
};

/** What goes through the jug; all else is weighed into the bowl. */
const POURED = /water$|juice$|milk$|^cream|coffee$|^vodka|yogurt$|puree$|yolk$/;

/** The poured lines first. */
function sorted(made: MadeRecipe): readonly (readonly [string, MadeRecipe["lines"]])[] {
  const [jug, bowl] = [true, false].map((isPoured) =>
    made.lines.filter(({ en }) => POURED.test(en) === isPoured),
  );
  const parts = [
    ["JUG", jug!],
    ["BOWL", bowl!],
  ] as const;
  return parts.filter(([, lines]) => lines.length > 0);
}

const SAID: readonly Said[] = [
  { label: "starts to set at", inCell: "°C", states: "freezing point", as: "formula" },
  { label: "water, counting the fruit's", inCell: "g", states: "water", as: "typed", decimals: 0 },
  {
    ...{ label: "frozen part of the water at −16 °C", inCell: "%" },
    ...{ states: "ice of water", as: "typed", temperatureC: -16, decimals: 0 },
  },
];

/** The lines by vessel, the vessel's grams after its last line, the whole above. */
function lines(kit: Kit, sheet: CorpusSheet, made: MadeRecipe) {
  const heads = putRow(sheet, 4, 0, [undefined, "Stuff", "Grams", "Vessel holds (g)"]);
  let row = 5;
  const [names, amounts]: [Spot[], Spot[]] = [[], []];
  for (const [vessel, { length }] of sorted(made)) {
    put(sheet, row, 0, vessel);
    const from = amounts.length;
    for (let index = from; index < from + length; index += 1, row += 1) {
      names.push(put(sheet, row, 1, made.names[index]));
      amounts.push(put(sheet, row, 2, made.grams[index]));
    }
    sumOf(kit, sheet, { row: row - 1, column: 3 }, amounts.slice(from));
  }
  put(sheet, 2, 1, "All of it");
  const total = sumOf(kit, sheet, { row: 2, column: 2 }, amounts);
  put(sheet, 2, 3, "g");
  const cells = { names, amounts, total, amountLabel: heads[2]!, unit: "g" } as const;
  return { recipe: markRecipe(kit, made, cells), row: row + 1 };
}

const PITCHES = [
  ["Harbour market", "Sat 8–13"],
  ["School fete", "Sun 11–16"],
  ["Lido steps", "Wed 12–18"],
  ["Band night", "Fri 17–21"],
] as const;

/** Where the stall stands this month, and what the pitches cost. */
function pitches(kit: Kit, sheet: CorpusSheet): void {
  putRow(sheet, 4, 5, ["Pitch", "We open", "Fee (£)", "Moulds to bring"]);
  const fees = PITCHES.map(([where, when], index) => {
    const fee = shown(kit.random.whole(20, 90) / 2, "0.00");
    return putRow(sheet, 5 + index, 5, [where, when, fee, kit.random.whole(4, 12) * 20])[2]!;
  });
  put(sheet, 9, 5, "Fees for the month");
  sumOf(kit, sheet, { row: 9, column: 7 }, fees, "0.00");
}

/** One lolly mix by jug and bowl, the pitches beside it, the answers at the foot. */
function lollyStall(kit: Kit): void {
  const plain = kit.make(1)[0]!;
  const ordered = withLines(
    plain,
    sorted(plain).flatMap(([, lines]) => lines),
  );
  const made = called(ordered, { sugar: "caster sugar", water: "tap water", salt: "fine salt" });
  const sheet = addSheet(kit.marked.book, "Lollies");
  put(sheet, 0, 0, `LOLLY OF THE MONTH – ${made.title}`);
  const { recipe, row } = lines(kit, sheet, made);
  pitches(kit, sheet);
  const mould = input(
    kit,
    sheet,
    { row: 12, column: 5 },
    { label: "Mix per mould (g)", bare: "Mix per mould", value: kit.random.pick([60, 70, 80]) },
  );
  const moulds = shown(`=${a1(recipe.total!)}/${a1(mould)}`, "0.0");
  putRow(sheet, 13, 5, ["Moulds from one mix", moulds]);
  const said = [...SAID, ...ofAlcohol(made, "pure alcohol", "g")];
  const next = say(sheet, recipe, { row: row + 1, column: 1 }, said);
  nameTarget(sheet, recipe, { row: next, column: 1, label: "bite we want" });
  tellIn(sheet, recipe, { row: 0, column: 5 }, VOICE);
  note(kit, sheet, next + 2, 1, "Sticks go in after forty minutes, not before.");
}

/** A market stall for lollies. */
export const lollyStalls: readonly Layout[] = [
  { name: "lolly stall, jug and bowl with the month's pitches", language: "en", build: lollyStall },
];
