import type { Cell, Matrix } from "../../src/foundation/cell";
import { isProblem, type Problem } from "../../src/foundation/problem";
import { worksheetFunctions } from "../../src/worksheet/functions";
import type { WorksheetFunction } from "../../src/worksheet/worksheetFunction";
import { argumentsOf } from "./callFormula";

// Every form in which a host hands over one argument, for every argument of every function: what the answer
// must be follows from the contract's rules on shapes, blanks and errors, not from the function.

type Outcome =
  | "as left out" // the default where there is one, else one sentence
  | "refused" // a sentence that begins with the argument's name
  | "one #VALUE!" // the whole call, whatever the other arguments are
  | readonly [rows: number, columns: number]; // the plain answer, as often as that

interface Form {
  readonly form: string;
  readonly of: (value: unknown) => unknown;
  readonly outcome: Outcome;
}

const ERROR = { type: "Error", basicType: "Error", basicValue: "#DIV/0!" };

const SCALAR: readonly Form[] = [
  { form: "null", of: () => null, outcome: "as left out" },
  { form: "undefined", of: () => undefined, outcome: "as left out" },
  { form: "a blank cell", of: () => [[null]], outcome: "as left out" },
  { form: '""', of: () => "", outcome: "as left out" },
  { form: '"" in a cell', of: () => [[""]], outcome: "as left out" },
  { form: "a text number", of: () => "12.5", outcome: "refused" },
  { form: "a text number with a comma", of: () => [["12,5"]], outcome: "refused" },
  { form: "a truth value", of: () => true, outcome: "refused" },
  { form: "an error", of: () => [[ERROR]], outcome: "refused" },
  { form: "a scalar", of: (value) => value, outcome: [1, 1] },
  { form: "1 × 1", of: (value) => [[value]], outcome: [1, 1] },
  { form: "a row", of: (value) => [[value, value, value]], outcome: [1, 3] },
  { form: "a column", of: (value) => [[value], [value]], outcome: [2, 1] },
  { form: "2 × 3", of: (value) => [...Array(2)].map(() => [value, value, value]), outcome: [2, 3] },
  { form: "ragged", of: (value) => [[value, value], [value]], outcome: "one #VALUE!" },
];

// items as a column of names, grams beside it: what each may be while the other stays.
const PAIR = { items: [["water"], ["sucrose"]], grams: [[200], [70]] };
const ITEMS: readonly Form[] = [
  { form: "null", of: () => null, outcome: "refused" },
  { form: '""', of: () => "", outcome: "refused" },
  { form: "a text number", of: () => [["water"], ["12.5"]], outcome: "refused" },
  { form: "a number", of: () => [["water"], [12.5]], outcome: "refused" },
  { form: "a truth value", of: () => [["water"], [true]], outcome: "refused" },
  { form: "an error", of: () => [["water"], [ERROR]], outcome: "refused" },
  { form: "a column", of: () => PAIR.items, outcome: [1, 1] },
  { form: "a row across the amounts", of: () => [["water", "sucrose"]], outcome: "one #VALUE!" },
  {
    form: "2 × 2",
    of: () => [
      ["water", "x"],
      ["sucrose", "y"],
    ],
    outcome: "one #VALUE!",
  },
  { form: "ragged", of: () => [["water", "x"], ["sucrose"]], outcome: "one #VALUE!" },
];
const GRAMS: readonly Form[] = [
  { form: "null", of: () => null, outcome: "refused" },
  { form: '""', of: () => [[""], [""]], outcome: "refused" },
  { form: "a text number", of: () => [[200], ["12.5"]], outcome: "refused" },
  { form: "a truth value", of: () => [[200], [true]], outcome: "refused" },
  { form: "an error", of: () => [[200], [ERROR]], outcome: "refused" },
  { form: "a scalar for two names", of: () => 200, outcome: "one #VALUE!" },
  { form: "a column", of: () => PAIR.grams, outcome: [1, 1] },
  { form: "a row across the names", of: () => [[200, 70]], outcome: "one #VALUE!" },
  {
    form: "two columns, two recipes",
    of: () => [
      [200, 200],
      [70, 70],
    ],
    outcome: [1, 2],
  },
  { form: "ragged", of: () => [[200, 200], [70]], outcome: "one #VALUE!" },
];
const OWN_HEADERS = ["name", "water", "sucrose", "allergens"];
const OWN: readonly Form[] = [
  { form: "null", of: () => null, outcome: "as left out" },
  { form: "a blank cell", of: () => [[null]], outcome: "as left out" },
  { form: '""', of: () => "", outcome: "as left out" },
  { form: "a text number", of: () => "12.5", outcome: "refused" },
  { form: "a truth value", of: () => true, outcome: "refused" },
  { form: "an error", of: () => [[ERROR]], outcome: "refused" },
  { form: "headers alone", of: () => [OWN_HEADERS], outcome: [1, 1] },
  { form: "a table", of: () => [OWN_HEADERS, ["mine", 40, 60, "none"]], outcome: [1, 1] },
  { form: "ragged", of: () => [OWN_HEADERS, ["mine", 40]], outcome: "one #VALUE!" },
];

/** The contract's exceptions: GRAMS reads a written amount, and takes a blank one for 0 g. */
const isExcepted = (name: string, parameter: string, form: string): boolean =>
  name === "GRAMS" && parameter === "amount" && /null|undefined|blank|""|text/.test(form);

/** A usual value for what the examples leave out and has no single default. */
const STAND_INS: Readonly<Record<string, unknown>> = {
  temperature: -10,
  coreTemperature: -15,
  search: "sugar",
  replacing: "sucrose",
  ownIngredients: null,
};

const hasRecipe = ({ parameters }: WorksheetFunction) => parameters[0]!.name === "items";

function formsOf(one: WorksheetFunction, at: number): readonly Form[] {
  if (hasRecipe(one) && at < 2) return at === 0 ? ITEMS : GRAMS;
  const { name } = one.parameters[at]!;
  const forms = name === "ownIngredients" ? OWN : SCALAR;
  return forms.filter(({ form }) => !isExcepted(one.name, name, form));
}

const scalarOf = (value: unknown): unknown =>
  Array.isArray(value) ? scalarOf((value as unknown[])[0]) : value;

/** The values of the function's example, with the pair above as its recipe; null for what it leaves out. */
function usualArguments(one: WorksheetFunction): unknown[] {
  const given = argumentsOf(one.example.formula);
  return one.parameters.map((_, at) => {
    if (hasRecipe(one) && at < 2) return at === 0 ? PAIR.items : PAIR.grams;
    return scalarOf(given[at] ?? null);
  });
}

const problemIn = (answer: Matrix): Problem | null =>
  answer.flat().find((cell: Cell) => isProblem(cell)) ?? null;

const shapeOf = (answer: Matrix) => `${answer.length} × ${answer[0]?.length ?? 0}`;

/** What an answer is, for comparison with what it should be. */
function verdict(answer: Matrix, plain: Matrix, name: string): string {
  if (JSON.stringify(answer) === JSON.stringify(plain)) return "plain";
  const problem = problemIn(answer);
  if (problem === null) {
    const isRepeated = answer.flat().every((cell) => cell === plain[0]?.[0]);
    return `${isRepeated ? "plain" : "another answer"}, ${shapeOf(answer)}`;
  }
  const isNamed = problem.message.startsWith(name) && problem.message.endsWith(".");
  const isOne = shapeOf(answer) === "1 × 1" && problem.kind === "badInput";
  return `${isOne ? "one #VALUE!" : "problem"}${isNamed ? " by name" : ""}: ${problem.message}`;
}

function expected(one: WorksheetFunction, at: number, outcome: Outcome): RegExp {
  const isOptional = one.parameters[at]!.optional;
  if (outcome === "as left out") return isOptional ? /^plain$/ : / by name: /;
  if (outcome === "refused") return / by name: /;
  if (outcome === "one #VALUE!") return /^one #VALUE!/;
  const [rows, columns] = outcome;
  if (rows === 1 && columns === 1) return /^plain$/;
  return one.unit === "table" ? /^one #VALUE!/ : new RegExp(`^plain, ${rows} × ${columns}$`);
}

describe.each(worksheetFunctions.map((one) => [one.name, one] as const))("%s", (_name, one) => {
  const usual = usualArguments(one);
  const cases = one.parameters.flatMap(({ name }, at) =>
    formsOf(one, at).map((form) => [name, form.form, at, form] as const),
  );

  test.each(cases)("%s as %s", (name, _form, at, { of, outcome }) => {
    const put = (value: unknown) => one.evaluate(usual.map((old, i) => (i === at ? value : old)));
    const value = usual[at] ?? one.parameters[at]!.default ?? STAND_INS[name];
    expect(value).toBeDefined();
    const isDefault = outcome === "as left out" && one.parameters[at]!.optional;
    const plain = put(isDefault ? null : value);
    if (typeof outcome === "object") expect(problemIn(plain)).toBeNull();
    expect(verdict(put(of(value)), plain, name)).toMatch(expected(one, at, outcome));
  });
});
