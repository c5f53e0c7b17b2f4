import { worksheetFunctions } from "../../src/worksheet/functions";
import { SIGNATURES } from "./contract";

test("no name, argument or order has changed", () => {
  const found = worksheetFunctions.map(({ name, parameters }) => {
    const inside = parameters.map((one) => (one.optional ? `[${one.name}]` : one.name));
    return `${name}(${inside.join(", ")})`;
  });
  expect([...found].sort()).toEqual([...SIGNATURES].sort());
});

test("every function says how it is computed or is a list, and see-also names exist", () => {
  const names = new Set(worksheetFunctions.map(({ name }) => name));
  for (const { name, method, seeAlso = [], summary, sources } of worksheetFunctions) {
    const isList = name === "SOLUTES" || name === "INGREDIENTS";
    expect([name, isList || (method ?? "").length > 15]).toEqual([name, true]);
    expect(summary.endsWith(".")).toBe(true);
    expect(sources.length).toBeGreaterThan(0);
    expect(seeAlso.filter((other) => !names.has(other))).toEqual([]);
  }
});
