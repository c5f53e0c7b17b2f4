import { auditWorkbook } from "../../src/audit/auditWorkbook";
import { effectText } from "../../src/audit/report/effectText";
import { terminalReport } from "../../src/audit/report/terminalReport";
import { bookOf } from "./bookOf";

test("an effect reads as one would say it", () => {
  const effect = { quantity: "freezing point", from: -1.4, to: -2.3, unit: "°C" };
  expect(effectText(effect)).toBe("freezing point −1.4 instead of −2.3 °C");
});

test("a sheet's texts cannot steer the terminal", () => {
  const escape = "\u001b[2J";
  const rows = [
    ["Ingredient", "g"],
    ["water", 100],
    ["sucrose", 20],
    [`moon${escape}dust`, 5],
  ];
  const text = terminalReport("a.xlsx", auditWorkbook(bookOf({ [`S${escape}`]: rows })));
  expect(text).toContain("moon�[2Jdust");
  expect(text).not.toContain("\u001b");
});

test("what has no effect on the answer comes last and says so", () => {
  const rows = [
    ["Ingredient", "g"],
    ["water", 100],
    ["sucrose", "20,5"],
    ["pistachios", 5],
  ];
  const lines = terminalReport("a.xlsx", auditWorkbook(bookOf({ S: rows }))).split("\n");
  const effects = lines.filter((line) => line.includes("effect:"));
  expect(effects.length).toBeGreaterThan(1);
  expect(effects.at(-1)).toContain("none on the answer");
});
