import { rules } from "../../src/audit/rules";
import { formula } from "./bookOf";
import { findingsOf, of } from "./findingsOf";
import { freshValues } from "./freshValues";
import { recipe, ruleCases } from "./ruleCases";

const examples = (wanted: boolean) =>
  ruleCases.filter(({ cells }) => cells.length > 0 === wanted).map((example) => ({ ...example }));

test.each(examples(true))("$rule flags $what", ({ rows, rule, cells, extras, workbook, fresh }) => {
  const found = of(findingsOf(rows, extras, workbook, freshValues(fresh ?? {})), rule);
  expect(found.map(({ cell }) => cell)).toEqual(cells);
  for (const { message } of found) expect(message).toMatch(/^.{20,300}$/);
});

test.each(examples(false))(
  "$rule leaves alone $what",
  ({ rows, rule, extras, workbook, fresh }) => {
    expect(of(findingsOf(rows, extras, workbook, freshValues(fresh ?? {})), rule)).toEqual([]);
  },
);

describe.each(rules.map(({ id }) => id))("%s", (id) => {
  test("has a true and a false example, a title and one place in the list", () => {
    expect(ruleCases.some(({ rule, cells }) => rule === id && cells.length > 0)).toBe(true);
    expect(ruleCases.some(({ rule, cells }) => rule === id && cells.length === 0)).toBe(true);
    expect(rules.filter((rule) => rule.id === id)).toHaveLength(1);
    expect(rules.find((rule) => rule.id === id)?.title).toMatch(/^[A-Z].{10,80}$/);
  });
});

describe("What a finding does to the answer", () => {
  test("a text amount is the difference between counting and not counting it", () => {
    const [found] = of(findingsOf(recipe(["Fructose", "60"])), "number-as-text");
    expect(found?.effect).toMatchObject({ quantity: "freezing point", unit: "°C" });
    // By the law: 60 g of fructose in 500 g of water add 1.86 · 60/180.16/0.5 = 1.24 K; real solutions a little more.
    expect(Number(found?.effect?.from) - Number(found?.effect?.to)).toBeGreaterThan(1.2);
    expect(Number(found?.effect?.from) - Number(found?.effect?.to)).toBeLessThan(1.6);
  });
  test("a text amount of an ambiguous name has its effect too", () => {
    expect(
      of(findingsOf(recipe(["Dextrose", "40,5"])), "number-as-text")[0]?.effect,
    ).not.toBeNull();
  });
  test("Kf = 18.6 makes the depression ten times as large", () => {
    const [found] = of(findingsOf(recipe([null], ["Kf", 18.6])), "cryoscopic-constant");
    expect(Number(found?.effect?.from) / Number(found?.effect?.to)).toBeCloseTo(10, 1);
  });
  test("a total shows what it should be, in its own unit", () => {
    const rows = recipe(["Lemon juice", 50], ["Total", formula("SUM(B2:B3)", 650)]);
    expect(of(findingsOf(rows), "total-incomplete")[0]?.effect).toEqual({
      quantity: "total of the recipe",
      from: 650,
      to: 700,
      unit: "g",
    });
  });
  test("hidden rows that count are told with their effect", () => {
    const found = of(
      findingsOf(recipe(["Fructose", 60]), { hiddenRows: new Set([3]) }),
      "hidden-amount",
    );
    expect(found.map(({ cell }) => cell)).toEqual(["B4"]);
    expect(found[0]?.effect).not.toBeNull();
    expect(of(findingsOf(recipe(["Fructose", 60])), "hidden-amount")).toEqual([]);
  });
});
