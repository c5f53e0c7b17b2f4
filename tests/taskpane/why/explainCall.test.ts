import { callFunction } from "../../../src/worksheet/callFunction";
import { worksheetFunctions } from "../../../src/worksheet/functions";
import { answerFor } from "../../../taskpane/why/answerFor";
import { explainCall } from "../../../taskpane/why/explainCall";

const find = (name: string) => worksheetFunctions.find((one) => one.name === name)!;
const items = [["water", "sucrose"]];
const grams = [
  [700, 100],
  [600, 200],
  [500, 300],
];
const temperatures = [[-5], [-10], [-18]];

test("each recipe of a column is explained at its own temperature", () => {
  const answers = callFunction("ICEFRACTION", items, grams, temperatures);
  grams.forEach((row, at) => {
    const explained = explainCall(find("ICEFRACTION"), [items, grams, temperatures], at);
    expect(answerFor(explained, at)).toBe(answers[at]![0]);
    expect(explained.ideal!.real).toBe(answers[at]![0]);
    const [[freezingPoint]] = callFunction("FREEZINGPOINT", items, [row]) as [[number]];
    expect(explained.board.map(({ result }) => result)).toContain(freezingPoint);
    const kelvin = explained.board.find(({ step }) => step === "depression by the ideal law")!;
    expect(explained.ideal!.ideal).toBeCloseTo(
      1 - (kelvin.result as number) / -temperatures[at]![0]!,
      12,
    );
  });
});

test("recipes across temperatures are a block, which no single cell answers", () => {
  const explained = explainCall(find("ICEFRACTION"), [items, grams, [[-5, -10]]], 1);
  expect(answerFor(explained, 1)).toBeNull();
  expect(explained.ideal).toBeNull();
});
