import { cellName } from "../../src/workbook/address";
import type { Rows } from "./bookOf";
import { formula } from "./bookOf";
import { findingsOf } from "./findingsOf";
import {
  freezingPointC,
  layoutsOf,
  RECIPES,
  withCell,
  type Grams,
  type Layout,
} from "./seededBooks";

/** One mistake put into a right sheet: where it must be found, and what else may follow from it. */
interface Seed {
  readonly rows: Rows;
  readonly cell: string;
}
type Mutation = (layout: Layout, recipe: Grams) => Seed | null;

const address = ([row, column]: readonly [number, number]) => cellName(row, column);
const changed = (
  layout: Layout,
  place: readonly [number, number],
  cell: Parameters<typeof withCell>[2],
): Seed => ({
  rows: withCell(layout, place, cell),
  cell: address(place),
});
const amountOf = (layout: Layout, recipe: Grams, index: number) =>
  (recipe[index]?.[1] ?? 0) * layout.scale;

/** Written from the list of what goes wrong in recipe sheets, not from the rules. */
const MUTATIONS: Readonly<Record<string, readonly Mutation[]>> = {
  "number-as-text": [
    (layout, recipe) =>
      changed(
        layout,
        layout.amountCell(1),
        String(amountOf(layout, recipe, 1) + 0.5 * layout.scale).replace(".", ","),
      ),
    (layout, recipe) =>
      changed(
        layout,
        layout.amountCell(2),
        `${amountOf(layout, recipe, 2)} ${layout.scale === 1 ? "g" : "kg"}`,
      ),
    (layout, recipe) => changed(layout, layout.amountCell(0), `${amountOf(layout, recipe, 0)} `),
  ],
  "unknown-ingredient": [
    (layout) => changed(layout, layout.nameCell(1), "scurose"),
    (layout) => changed(layout, layout.nameCell(0), "crushed moonstone"),
  ],
  "ambiguous-ingredient": [
    (layout) => changed(layout, layout.nameCell(0), "Milk"),
    (layout) => changed(layout, layout.nameCell(1), "glucose syrup"),
  ],
  "hydrate-not-stated": [(layout) => changed(layout, layout.nameCell(1), "Dextrose")],
  "freezing-point-sign": [
    (layout, recipe) =>
      layout.freezing === null
        ? null
        : changed(layout, layout.freezing, Number((-freezingPointC(recipe)).toFixed(2))),
  ],
  "result-differs": [
    (layout, recipe) =>
      layout.freezing === null
        ? null
        : changed(layout, layout.freezing, Number((freezingPointC(recipe) * 1.4).toFixed(2))),
    (layout, recipe) =>
      layout.freezing === null
        ? null
        : changed(layout, layout.freezing, Number((freezingPointC(recipe) * 0.5).toFixed(2))),
  ],
  "total-incomplete": [
    (layout, recipe) => {
      if (layout.total === null) return null;
      const [first, beforeLast] = [layout.amountCell(0), layout.amountCell(recipe.length - 2)];
      const sum = recipe.slice(0, -1).reduce((total, [, grams]) => total + grams * layout.scale, 0);
      const isSmall = (recipe.at(-1)?.[1] ?? 0) * layout.scale < 0.006 * sum; // 2 g of gum in 800 g
      return isSmall
        ? null
        : changed(
            layout,
            layout.total,
            formula(`SUM(${address(first)}:${address(beforeLast)})`, sum),
          );
    },
    (layout) => (layout.total === null ? null : changed(layout, layout.total, 999 * layout.scale)),
  ],
  "error-in-an-amount": [(layout) => changed(layout, layout.amountCell(1), { error: "#REF!" })],
};

/** What may be found as well, since the one mistake brings it about. */
const FOLLOWS: Readonly<Record<string, readonly string[]>> = {
  "freezing-point-sign": ["result-differs"],
  "unknown-ingredient": [],
  "number-as-text": ["total-incomplete"],
  "error-in-an-amount": ["total-incomplete"],
};

const books = RECIPES.flatMap((recipe) => layoutsOf(recipe).map((layout) => ({ recipe, layout })));
const mattering = (rows: Rows) => findingsOf(rows).filter(({ severity }) => severity !== "note");

test("none of the right sheets has an error or a warning", () => {
  const wrong = books.flatMap(({ layout, recipe }) =>
    mattering(layout.rows).map((finding) => ({
      layout: layout.title,
      first: recipe[0]?.[0],
      ...finding,
    })),
  );
  expect(books).toHaveLength(30);
  expect(wrong).toEqual([]);
});

describe.each(Object.keys(MUTATIONS))("%s", (rule) => {
  const seeds = books.flatMap(({ layout, recipe }) =>
    (MUTATIONS[rule] ?? []).flatMap((mutate) => {
      const seed = mutate(layout, recipe);
      return seed === null ? [] : [{ ...seed, title: `${layout.title}, ${recipe[0]?.[0] ?? ""}` }];
    }),
  );
  test("is found where it was put, in every sheet", () => {
    const missed = seeds.filter(
      ({ rows, cell }) => !mattering(rows).some((one) => one.rule === rule && one.cell === cell),
    );
    expect(seeds.length).toBeGreaterThanOrEqual(20);
    expect(missed.map(({ title, cell }) => `${title} ${cell}`)).toEqual([]);
  });
  test("brings about no other finding", () => {
    const allowed = new Set([rule, ...(FOLLOWS[rule] ?? [])]);
    const others = seeds.flatMap(({ rows, title }) =>
      mattering(rows)
        .filter((one) => !allowed.has(one.rule))
        .map((one) => `${title}: ${one.cell} ${one.rule}`),
    );
    expect(others).toEqual([]);
  });
});
