import type { Cell, Matrix } from "../../src/foundation/cell";
import { badInput, isProblem, outsideValidity, type Problem } from "../../src/foundation/problem";
import { worksheetFunctions } from "../../src/worksheet/functions";
import { argumentsOf, nameOf } from "./callFormula";

// What no cell should hold, as a host or a careless caller may hand it over.
const NEVER_A_VALUE: readonly unknown[] = [
  ...[NaN, Infinity, -Infinity],
  ...[10n, -(2n ** 70n), Symbol("x"), () => 1],
  ...[new Date(0), new Date(NaN), {}, { a: 1 }, new Map(), new Set([1]), /x/, new Error("x")],
  ...["#N/A", "#VALUE!", "#REF!", "#DIV/0!", "#NUM!", "#NAME?", "#NULL!", "#SPILL!"].map(
    (basicValue) => ({ type: "Error", basicType: "Error", basicValue }),
  ),
  { type: "Error" },
  { basicType: "Error", basicValue: 5 },
  { code: "#N/A", message: "not there" },
  { type: "Entity", text: "x", properties: {} },
  { type: "Double", basicValue: NaN },
  { type: "Double", basicValue: Infinity },
  badInput("#REF!"),
  outsideValidity("#N/A"),
];

// What a sheet does hold where it should not: some of it is right for some argument.
const ODD_VALUES: readonly unknown[] = [
  ...[null, undefined, "", " ", "\t", "\u00a0"],
  ...[
    "x",
    "12,5",
    "12.5",
    "1e3",
    "-5",
    "NaN",
    "Infinity",
    "TRUE",
    "null",
    "undefined",
    "[object Object]",
  ],
  ...[
    "sucros",
    "watr",
    "glucose syrup",
    "dextrose",
    "chocolate",
    "=1+1",
    "'5",
    "<b>",
    "💥",
    "a".repeat(5000),
  ],
  ...[
    "__proto__",
    "constructor",
    "toString",
    "hasOwnProperty",
    "#N/A",
    "total",
    "Summe",
    "½",
    "1/0",
  ],
  ...[true, false],
  ...[-1, -0, 0, -1e-300, 1e-300, 5e-324, 1e300, -1e300, Number.MAX_VALUE, -Number.MAX_VALUE],
  ...[-273.15, -300, -61, -60, 41, 1e6, 1e9, 1e10, 0.5, 1.5, 2 ** 53],
  { type: "Double", basicType: "Double", basicValue: -7 },
  { type: "String", basicType: "String", basicValue: "x" },
  { type: "FormattedNumber", basicType: "Double", basicValue: 0.12, numberFormat: "0 %" },
  { type: "Empty", basicType: "Empty" },
];

const RAGGED: readonly unknown[] = [
  ...[[], [[]], [[], []], [[1, 2], [3]], [[1], [2, 3]], [[1], 2], [1, [2]], [[1, 2], []]],
  ...[[["water"], ["sucrose", "x"]], [[["water"]]]],
];

const forms = (value: unknown, usual: unknown): readonly unknown[] => [
  value,
  [[value]],
  [[usual], [value]],
  [[value, usual]],
];

/** A usual scalar in place of a range, so that a bad cell can stand beside it. */
const scalar = (usual: unknown): unknown =>
  Array.isArray(usual) ? scalar((usual as unknown[])[0]) : usual;

interface Trial {
  readonly args: readonly unknown[];
  readonly parameter: string;
  readonly mustFail: boolean;
}

function trialsOf({ parameters, example }: (typeof worksheetFunctions)[number]): Trial[] {
  const usual = argumentsOf(example.formula);
  return parameters.flatMap(({ name }, at): Trial[] => {
    const put = (value: unknown, mustFail: boolean): Trial => {
      const args: unknown[] = parameters.map((_, index) => usual[index] ?? null);
      args[at] = value;
      return { args, parameter: name, mustFail };
    };
    return [
      ...NEVER_A_VALUE.flatMap((value) =>
        forms(value, scalar(usual[at] ?? null)).map((form) => put(form, true)),
      ),
      ...ODD_VALUES.flatMap((value) =>
        forms(value, scalar(usual[at] ?? null)).map((form) => put(form, false)),
      ),
      ...RAGGED.map((value) => put(value, true)),
    ];
  });
}

const isSound = (cell: Cell): boolean =>
  cell === null ||
  isProblem(cell) ||
  typeof cell === "string" ||
  typeof cell === "boolean" ||
  (typeof cell === "number" && Number.isFinite(cell));

const problemsOf = (answer: Matrix): Problem[] => answer.flat().filter((cell) => isProblem(cell));

const LIMIT =
  /expected|must|nearest|no name resembles|write "|answered|at most|needs at least|more than|declined|below|all rows/;

/** One sentence that names the argument and says what would be right. */
function faults({ message }: Problem, names: readonly string[]): string[] {
  const found: string[] = [];
  if (!names.some((name) => message.includes(name))) found.push(`names no argument: ${message}`);
  if (!LIMIT.test(message)) found.push(`states no limit: ${message}`);
  if (!message.endsWith(".")) found.push(`is no sentence: ${message}`);
  if (message.length > 700) found.push(`is too long: ${message.slice(0, 100)}`);
  if (/NaN\b(?! is not)|undefined|\[object/.test(message.replaceAll(/"[^"]*"/g, ""))) {
    found.push(`shows a raw value: ${message}`);
  }
  return found;
}

describe.each(worksheetFunctions.map((one) => [one.name, one] as const))("%s", (_name, one) => {
  const trials = trialsOf(one);
  const names = [...one.parameters.map(({ name }) => name), "arguments", "soluteGrams", "grams"];

  test("is tried with at least 200 malformed arguments", () => {
    expect(trials.length).toBeGreaterThanOrEqual(200);
  });

  test("answers every malformed argument with sound cells and plain sentences", () => {
    const wrong: string[] = [];
    for (const { args, parameter, mustFail } of trials) {
      const answer = one.evaluate(args);
      const width = answer[0]?.length ?? 0;
      if (width === 0 || answer.some((row) => row.length !== width))
        wrong.push(`${parameter}: ragged`);
      if (!answer.flat().every(isSound))
        wrong.push(`${parameter}: not a value in ${JSON.stringify(answer)}`);
      const problems = problemsOf(answer);
      if (mustFail && problems.length === 0) wrong.push(`${parameter}: accepted ${typeof args}`);
      wrong.push(...problems.flatMap((problem) => faults(problem, names)));
    }
    expect([...new Set(wrong)]).toEqual([]);
  });

  test("answers its own example", () => {
    expect(nameOf(one.example.formula)).toBe(one.name);
    const answer = one.evaluate(argumentsOf(one.example.formula));
    expect(problemsOf(answer)).toEqual([]);
    expect(answer.flat().every((cell) => cell !== null && isSound(cell))).toBe(true);
  });

  test("answers nothing at all with a sentence, unless everything is optional", () => {
    const answer = one.evaluate([]);
    const optional = one.parameters.every((parameter) => parameter.optional);
    expect(problemsOf(answer).length === 0).toBe(optional || one.name === "GRAMS");
  });
});
