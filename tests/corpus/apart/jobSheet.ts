import { a1, addSheet, fixed, put, putRow, shown, type CorpusSheet, type Spot } from "../book";
import type { Voice } from "../caterers/words";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { called, stillMet } from "../kitchens/hand";
import { markRecipe, say, sumOf } from "../layouts/parts";
import type { MarkedRecipe } from "../marks";
import { beside, listed } from "../newcomers/words";
import { perHundred, type MadeRecipe } from "../recipes";
import { ofAlcohol } from "../strollers/words";
import { usualPrice } from "../unseen/shared";
import { readings, tellBeside } from "./words";

const VOICE: Voice = {
  lead: "WRAPPER: CONTAINS",
  honey: "WRAPPER: honey, unsuitable for infants under 12 months",
  alcohol: "WRAPPER: contains alcohol, not for children, in pregnancy or before driving",
  nuts: "WRAPPER: whole nuts, choking hazard, not under 5 years",
  egg: "KETTLE: raw egg yolk, hold mix at 71 °C or order pasteurised",
};

interface Run {
  readonly factor: Spot;
  readonly pops: Spot;
}

/** What the run is: pops, their weight, what is lost; gives the factor on 100 g. */
function run(kit: Kit, sheet: CorpusSheet): Run {
  const { random, marked } = kit;
  const given = (row: number, bare: string, value: number): Spot => {
    const [label, spot] = putRow(sheet, row, 1, [`${bare} [g]`, value]);
    marked.inputs.push({ label: label!, value: spot!, bare });
    return spot!;
  };
  const pops = putRow(sheet, 2, 1, ["POPS ORDERED", 24 * random.whole(5, 20)])[1]!;
  const weight = given(3, "MIX IN ONE POP", random.pick([65, 70, 80]));
  const lost = given(4, "STAYS IN PIPES AND KETTLE", 100 * random.whole(4, 9));
  const formula = `=(${a1(pops)}*${a1(weight)}+${a1(lost)})/100`;
  return { pops, factor: putRow(sheet, 5, 1, ["TIMES THE 100 G RECIPE", formula])[1]! };
}

/** The recipe for 100 g, what the kettle gets, and what it costs. */
function kettle(kit: Kit, sheet: CorpusSheet, made: MadeRecipe, { factor }: Run) {
  const { heads, names, amounts, end } = listed(
    sheet,
    made,
    { row: 7, column: 0 },
    {
      heads: ["NO", "RAW MATERIAL", "IN 100 G [g]", "KETTLE [g]", "£/KG", "COST [£]", "CHECKED BY"],
      cells: (name, grams, index) => [
        ...[index + 1, name, shown(grams, "0.0"), undefined],
        shown(usualPrice(kit.random, made.lines[index]!.en), "0.00"),
      ],
      ...{ name: 1, amount: 2 },
    },
  );
  const kettles = beside(kit, heads[3]!, amounts, {
    ...{ sheet, format: "0", fixed: [factor] },
    content: (spot) => `=${a1(spot)}*${fixed(factor)}`,
  });
  const costs = beside(kit, heads[5]!, kettles, {
    ...{ sheet, format: "0.00" },
    content: (spot) => `=${a1(spot)}/1000*${a1({ ...spot, column: 4 })}`,
  });
  put(sheet, end, 1, "TOTAL");
  const total = sumOf(kit, sheet, { row: end, column: 2 }, amounts, "0.0");
  sumOf(kit, sheet, { row: end, column: 3 }, kettles, "0");
  const cost = sumOf(kit, sheet, { row: end, column: 5 }, costs, "0.00");
  const amountLabel = heads[2]!;
  const lines = { names, amounts, alsoAmounts: kettles, amountLabel, total, unit: "g" } as const;
  return { recipe: markRecipe(kit, made, lines), cost, end };
}

/** What the line has to know of the mix. */
function mixData(sheet: CorpusSheet, recipe: MarkedRecipe, row: number): number {
  const next = say(sheet, recipe, { row, column: 1 }, [
    { label: "FREEZING POINT [°C]", states: "freezing point", as: "typed", decimals: 2 },
    { label: "WATER, 100 G OF MIX [g]", states: "water", as: "formula", format: "0.0" },
    ...ofAlcohol(recipe.made, "ETHANOL, 100 G OF MIX [g]"),
    { label: "DISSOLVED, 100 G OF MIX [g]", states: "dissolved", as: "typed", decimals: 1 },
    {
      ...{ label: "WATER FROZEN AT −18 °C [%]", decimals: 1 },
      ...{ states: "ice of water", as: "typed", temperatureC: -18 },
    },
    {
      ...{ label: "ICE IN THE POP AT −25 °C [%]", decimals: 0 },
      ...{ states: "ice of mix", as: "typed", temperatureC: -25 },
    },
  ]);
  nameTarget(sheet, recipe, { row: next, column: 1, label: "BITE" });
  return next + 1;
}

const HOURS = ["06:00", "08:00", "10:00", "12:00", "14:00"];

/** One run of a factory that fills moulds. */
function jobSheet(kit: Kit): void {
  const sheet = addSheet(kit.marked.book, "JOB");
  const plain = stillMet(perHundred(kit.make(1)[0]!));
  const made = called(plain, { water: "filtered water", salt: "fine salt" });
  const title = made.title.toUpperCase();
  putRow(sheet, 0, 0, ["JOB", kit.random.whole(2100, 2900), undefined, title]);
  putRow(sheet, 1, 0, ["DATE", shown(kit.random.whole(46150, 46260), "dd/mm/yyyy")]);
  const job = run(kit, sheet);
  const { recipe, cost, end } = kettle(kit, sheet, made, job);
  const next = mixData(sheet, recipe, end + 2);
  const perPop = shown(`=${a1(cost)}/${a1(job.pops)}`, "0.000");
  putRow(sheet, end + 2, 4, ["MIX COST OF ONE POP [£]", perPop]);
  tellBeside(sheet, recipe, { row: next + 1, column: 1 }, VOICE);
  readings(
    kit,
    sheet,
    { row: end + 4, column: 4 },
    {
      heads: ["HOUR", "BRINE [°C]", "MOULDS OUT", "INITIALS"],
      ...{ when: HOURS, tenths: [-352, -321] },
      rest: () => [24 * kit.random.whole(1, 4), kit.random.pick(["JL", "PV", "SA"])],
    },
  );
  note(kit, sheet, next + 5, 1, "RINSE THE FILLER WITH WARM WATER BETWEEN JOBS.");
}

/** A factory's job sheet, all in capitals. */
export const jobSheets: readonly Layout[] = [
  { name: "job sheet of a pop factory, 100 g to the kettle", language: "en", build: jobSheet },
];
