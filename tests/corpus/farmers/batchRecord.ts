import { addSheet, put, putRow, shown } from "../book";
import { tellIn, type Voice } from "../caterers/words";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { called } from "../kitchens/hand";
import { markRecipe, say, sumOf, type Said } from "../layouts/parts";
import { listed } from "../newcomers/words";
import type { MadeRecipe } from "../recipes";
import { ofAlcohol, upTo } from "../strollers/words";
import { readings, table } from "./words";

const VOICE: Voice = {
  lead: "Allergens on label:",
  honey: "Label: honey, unsuitable for infants under 12 months.",
  alcohol: "Label: alcohol, not for children, in pregnancy, or if driving.",
  nuts: "Label: whole nuts, choking hazard under 5 years.",
  egg: "CCP: raw egg yolk, hold at 71 °C or receive pasteurised.",
};

const OWN = {
  ...{ "skim milk powder": "SMP", "dextrose monohydrate": "dextrose mono" },
  ...{ "cream 35 % fat": "whipping cream 35%", water: "tap water" },
};

const saidOf = (made: MadeRecipe): readonly Said[] => [
  { label: "F.pt. of mix", inCell: "°C", states: "freezing point", as: "typed", decimals: 2 },
  { label: "Dissolved solids", inCell: "g", states: "dissolved", as: "typed", decimals: 0 },
  { label: "Water, total", inCell: "g", states: "water", as: "formula", format: "0" },
  ...ofAlcohol(made, "Ethanol", "g"),
  {
    ...{ label: "Water frozen at draw, −6 °C", inCell: "%" },
    ...{ states: "ice of water", as: "typed", temperatureC: -6, decimals: 0 },
  },
];

/** One batch: head, weigh sheet, process log and sign-off. */
function record(kit: Kit, made: MadeRecipe, batch: number, day: number): void {
  const { random } = kit;
  const sheet = addSheet(kit.marked.book, `B${batch}`);
  put(sheet, 0, 0, "BATCH MANUFACTURING RECORD");
  sheet.merged.push({ top: 0, left: 0, bottom: 0, right: 4 });
  table(sheet, { row: 1, column: 0 }, [
    ["Product", made.title, undefined, "Batch no.", batch],
    ["Made on", `${day} May`, undefined, "By", random.pick(["IM", "KR", "EF"])],
  ]);
  const { heads, names, amounts, end } = listed(
    sheet,
    made,
    { row: 4, column: 0 },
    {
      heads: ["Raw material", "Supplier lot", "Weigh out", "Weighed by", "Tipped in"],
      cells: (name, grams) => [
        ...[name, `L${random.whole(1000, 9999)}`, shown(grams, '#,##0" g"')],
        ...[random.pick(["IM", "KR", "EF"]), "ok"],
      ],
      ...{ name: 0, amount: 2 },
    },
  );
  put(sheet, end, 0, "Batch size");
  const total = sumOf(kit, sheet, { row: end, column: 2 }, amounts, '#,##0" g"');
  const lines = { names, amounts, total, unit: "g", amountLabel: heads[2]! } as const;
  const recipe = markRecipe(kit, made, lines);
  put(sheet, end + 2, 0, "Mix data");
  const next = say(sheet, recipe, { row: end + 3, column: 0 }, saidOf(made));
  nameTarget(sheet, recipe, { row: next, column: 0, label: "Spec" });
  const after = readings(
    kit,
    sheet,
    { row: next + 2, column: 0 },
    {
      heads: ["Storage check", "Vat °C", "Cold room °C", "Hardening °C"],
      labels: ["06:00", "11:00", "16:00", "21:00"],
      ranges: [
        [2, 4],
        [1, 4],
        [-29, -25],
      ],
    },
  );
  tellIn(sheet, recipe, { row: after + 1, column: 0 }, VOICE);
  putRow(sheet, after + 3, 0, ["Released by", random.pick(["IM", "KR"]), undefined, "Held?", "no"]);
}

const USUAL = ["IM  Isla", "KR  Kenny", "EF  Eilidh"];

/** Two batches and who is who. */
function dairy(kit: Kit): void {
  const first = kit.random.whole(210, 480);
  const mades = kit.make(2).map((made) => called(upTo(made, 9000), OWN));
  const day = kit.random.whole(2, 27);
  mades.forEach((made, index) => record(kit, made, first + index, day + index));
  const sheet = addSheet(kit.marked.book, "Initials");
  USUAL.forEach((words, index) => put(sheet, index, 0, words));
  note(kit, sheet, 5, 0, "Scale no. 2 back from calibration, sticker on the plate.");
}

/** A farm dairy's records. */
export const farmDairies: readonly Layout[] = [
  { name: "farm dairy near Huntly, batch manufacturing records", language: "en", build: dairy },
];
