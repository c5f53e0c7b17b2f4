import { addSheet, put, shown, type CorpusSheet, type Spot } from "../book";
import { downColumn, factsDown, tellIn, type Fact, type Voice } from "../caterers/words";
import { note, type Kit, type Layout } from "../kit";
import { called } from "../kitchens/hand";
import { again } from "../layouts/marking";
import { itemsOf } from "../strollers/words";
import { tableAt, thermometers } from "./words";

const VOICE: Voice = {
  lead: "tell people:",
  honey: "has honey, no babies under 12 months.",
  alcohol: "has alcohol, no kids, nobody pregnant, nobody driving.",
  nuts: "whole nuts, little ones under 5 could choke.",
  egg: "raw yolk, get it to 71 °C or buy pasteurised.",
};

const FACTS: readonly Fact[] = [
  ["freezing point °C", { states: "freezing point", as: "formula", format: "0.0" }],
  ["water in it, g", { states: "water", as: "typed", decimals: 0 }],
  [
    "% of the whole lot that is ice at −18 °C",
    { states: "ice of mix", as: "typed", temperatureC: -18, decimals: 0 },
  ],
  ["dissolved stuff, g", { states: "dissolved", as: "formula", format: "0" }],
];

const OWN = { sugar: "white sugar", "dextrose monohydrate": "glucose monohydrate" };

/** Four goes at one ice, a column for each with a blank between; what came of it underneath. */
function goes(kit: Kit, sheet: CorpusSheet): void {
  const first = kit.make(1)[0]!;
  const mades = [first, again(kit, first), again(kit, first), again(kit, first)].map((made) =>
    called(made, OWN),
  );
  put(sheet, 0, 0, `Getting the ${first.title.toLowerCase()} right`);
  const amountLabel = put(sheet, 2, 0, "grams of");
  const dates = ["2 Feb", "9 Feb", "23 Feb", "1 Mar"];
  dates.forEach((date, at) => put(sheet, 2, 1 + 2 * at, date));
  const items: Spot[] = itemsOf(mades).map((item, at) => put(sheet, 3 + at, 0, item));
  const end = 3 + items.length;
  put(sheet, end, 0, "in the bowl");
  put(sheet, end + 6, 0, "after");
  put(sheet, end + 7, 0, "allergies etc.");
  put(sheet, end + 8, 0, "marks out of ten");
  mades.forEach((made, at) => {
    const column = 1 + 2 * at;
    const plan = { items, left: 1, step: 2, unit: "g", format: "0", amountLabel } as const;
    const recipe = downColumn(kit, sheet, made, at, plan);
    factsDown(sheet, recipe, FACTS, { row: end + 2, column, labels: 0, items });
    if (made.target !== null) recipe.targets.push(put(sheet, end + 6, column, made.target));
    tellIn(sheet, recipe, { row: end + 7, column }, VOICE);
    put(sheet, end + 8, column, kit.random.whole(5, 9));
  });
  note(kit, sheet, end + 10, 0, "Third one was the week the freezer door stayed ajar.");
}

/** What was bought, and how cold the freezer is on each shelf. */
function garage(kit: Kit, sheet: CorpusSheet): void {
  const rows = tableAt(sheet, { row: 0, column: 0 }, [
    ["bought", "shop", "£"],
    ["ice cream tubs", "market", shown(6.5, "0.00")],
    ["sugar thermometer", "online", shown(11.99, "0.00")],
    ["silicone spatula", "hardware", shown(4.25, "0.00")],
  ]);
  put(sheet, 4, 0, "so far");
  const parts = rows.slice(1).map((cells) => cells[2]!);
  const spot = put(sheet, 4, 2, shown("=SUM(C2:C4)", "0.00"));
  kit.marked.sums.push({ spot, parts });
  thermometers(
    kit,
    sheet,
    { row: 0, column: 5 },
    {
      heads: ["shelf", "door shut °C", "door opened a lot °C"],
      lines: ["top", "middle", "bottom"],
      ...{ from: -19, to: -13 },
    },
  );
}

/** A hobby cook's goes at one recipe. */
function tries(kit: Kit): void {
  goes(kit, addSheet(kit.marked.book, "Goes"));
  garage(kit, addSheet(kit.marked.book, "Garage"));
}

/** A hobby cook. */
export const hobbyTries: readonly Layout[] = [
  { name: "hobby, four goes at the same ice", language: "en", build: tries },
];
