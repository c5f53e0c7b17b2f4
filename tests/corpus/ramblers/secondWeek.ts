import { addSheet, put } from "../book";
import { nameTarget, tell, type Kit } from "../kit";
import { markRecipe, say, sumOf } from "../layouts/parts";
import { listed } from "../newcomers/words";
import { ofAlcohol } from "../strollers/words";

/** The real mix that the section freezes in week two. */
export function mixSheet(kit: Kit): void {
  const sheet = addSheet(kit.marked.book, "Week 2 mix");
  const made = kit.make(1)[0]!;
  put(sheet, 0, 0, `Week 2: ${made.title} by the same idea`);
  const list = listed(
    sheet,
    made,
    { row: 2, column: 0 },
    {
      heads: ["Mass (g)", "Component"],
      ...{ cells: (name, grams) => [grams, name], name: 1, amount: 0 },
    },
  );
  const { heads, names, amounts, end } = list;
  const total = sumOf(kit, sheet, { row: end, column: 0 }, amounts);
  put(sheet, end, 1, "mix in all");
  const lines = { names, amounts, total, unit: "g", amountLabel: heads[0]! } as const;
  const recipe = markRecipe(kit, made, lines);
  const next = say(sheet, recipe, { row: 2, column: 3 }, [
    { label: "Water phase (g)", states: "water", as: "typed", decimals: 0 },
    { label: "Solutes in it (g)", states: "dissolved", as: "formula", format: "0" },
    { label: "Freezing point depression, K", states: "depression", as: "typed" },
    { label: "Initial freezing point, °C", states: "freezing point", as: "formula" },
    {
      label: "Fraction of the water frozen at −18 °C",
      ...{ states: "ice of water", as: "typed", temperatureC: -18, percent: "format" },
    },
    ...ofAlcohol(made, "Ethanol (g)"),
  ]);
  nameTarget(sheet, recipe, { row: next, column: 3, label: "Product" });
  tell(kit, sheet, recipe, { row: end + 3, column: 0, as: "pair" });
}
