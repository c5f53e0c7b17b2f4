import { callFunction } from "../../src/worksheet/callFunction";
import { auditContext } from "../../src/audit/context";
import { bookOf, formula, type Rows } from "./bookOf";
import { expectFound, type Tried } from "./tried";

/** A batch as scales write it, in two long rows. */
interface Batch {
  readonly items: readonly string[];
  readonly grams: readonly number[];
}

const WIDE: Batch = {
  items: ["Apfelmus", "Wasser", "Kristallzucker", "Fruktose", "Inulin", "Zitronensaft"],
  grams: [9000, 5000, 3000, 500, 500, 400],
};
const NARROW: Batch = {
  items: ["Wasser", "Kristallzucker", "Spirituose 40 % vol"],
  grams: [6000, 1500, 500],
};

function numberOf(name: string, { items, grams }: Batch, ...more: readonly (string | number)[]) {
  const answer = callFunction(name, [[...items]], [[...grams]], ...more)[0]?.[0];
  return Math.round(1000 * Number(answer)) / 1000;
}

/** The batch, what is said of it in two more rows, right below, and a remark. */
function batch(made: Batch, top: number, given: { grams?: number; ice?: number } = {}): Rows {
  const [first = 0, ...grams] = made.grams;
  const point = numberOf("FREEZINGPOINT", made);
  const amounts = [given.grams ?? first, ...grams];
  const end = "ABCDEFGH"[amounts.length] ?? "";
  const sum = formula(
    `SUM(B${top + 1}:${end}${top + 1})`,
    amounts.reduce((all, one) => all + one, 0),
  );
  return [
    ["Zutat", ...made.items, "Charge gesamt"],
    ["Gramm", ...amounts, sum],
    [
      ...[null, "Gefrierpunkt °C", "Erniedrigung K", "Wasser g", "Alkohol g"],
      ...["Gelöstes g", "Wasser gefroren bei -18 °C in %"],
    ],
    [
      ...[null, point, -point, numberOf("COMPONENT", made, "water")],
      ...[numberOf("COMPONENT", made, "ethanol"), numberOf("COMPONENT", made, "dissolved solids")],
      given.ice ?? 100 * numberOf("ICEFRACTION", made, -18),
    ],
    ["Notiz", "wie immer"],
    [],
  ];
}

const day = (...given: Parameters<typeof batch>[2][]): Rows => [
  ...batch(WIDE, 1, given[0]),
  ...batch(NARROW, 7, given[1]),
];

describe("Batches across with their answers in the rows below", () => {
  test("are read from their first ingredient on, and their answers are none", () => {
    const { blocks } = auditContext(bookOf({ Tag: day() }), []);
    expect(blocks.map(({ names }) => names.map(({ item }) => item))).toEqual([
      WIDE.items,
      NARROW.items,
    ]);
  });
  test.each<Tried>([
    { what: "right", sheets: { Tag: day() }, found: [] },
    {
      what: "the last answer, which goes on beyond its list below a wider one, wrong",
      sheets: { Tag: day({}, { ice: 55 }) },
      found: ["result-differs Tag!G10"],
    },
    {
      what: "all of a mix with other water, but for its alcohol and sugar",
      sheets: { Tag: day({}, { grams: 3000 }) },
      found: ["B", "C", "D", "G"].map((column) => `result-differs Tag!${column}10`),
    },
  ])("$what", expectFound);
});

test("a solution right below another one has its own water, sugar and freezing point", () => {
  const solution = (sugar: number): Rows => [
    ["Wasser g", "Zucker g", "Gefrierpunkt °C"],
    [500, sugar, numberOf("FREEZINGPOINT", { items: ["Wasser", "Zucker"], grams: [500, sugar] })],
  ];
  const rows = [...solution(50), ...solution(100)];
  expect(auditContext(bookOf({ Tag: rows }), []).blocks).toHaveLength(2);
});

test("a column of words between the amounts is none of them", () => {
  const rows: Rows = [
    ["Charge", "Wasser", "Ort", "Zucker", "Milch"],
    ["A", 500, "Keller", 150, 200],
    ["B", 600, "Keller", 160, 300],
  ];
  const [block] = auditContext(bookOf({ Tag: rows }), []).blocks;
  expect(block?.names.map(({ item }) => item)).toEqual(["Wasser", "Zucker", "Milch"]);
});
