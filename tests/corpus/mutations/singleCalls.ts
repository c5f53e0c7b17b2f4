import { addSheet, put, putRow, shown, span, a1 } from "../book";
import type { Mutation, Variant } from "../mutation";

const HEADS = [
  ["Trial", "water", "sucrose", "dextrose monohydrate", "lemon juice"],
  ["Versuch", "Wasser", "Saccharose", "Dextrose-Monohydrat", "Zitronensaft"],
] as const;

const absolute = (range: string): string => range.replace(/([A-Z]+)(\d+)/g, "$$$1$$$2");

interface Call {
  readonly headings: readonly [string, string];
  readonly formula: (names: string, amounts: string, first: string) => string;
}

const CALLS: readonly Call[] = [
  {
    headings: ["Freezing point (°C)", "Gefrierpunkt (°C)"],
    formula: (names, amounts) => `=RIME.FREEZINGPOINT(${names},${amounts})`,
  },
  {
    headings: ["Depression (K)", "Gefrierpunktserniedrigung (K)"],
    formula: (names, amounts) => `=RIME.DEPRESSION(${names},${amounts})`,
  },
  {
    headings: ["Sucrose (mol)", "Saccharose (mol)"],
    formula: (_, __, first) => `=RIME.MOLES("sucrose",${first})`,
  },
];

/** Adds a sheet of thousands of trials, each with a call of its own. */
const longTable = ({ headings, formula }: Call): Variant => ({
  apply: ({ book }, random) => {
    const language = random.whole(0, 1);
    const top = random.whole(0, 3);
    const title = ["Trials", "Versuche"][language]!;
    // No workbook has two sheets of one name.
    const isTaken = book.sheets.some(({ name }) => name === title);
    const sheet = addSheet(book, isTaken ? `${title} 2` : title);
    if (top > 0) put(sheet, 0, 0, ["Trials, amounts in g", "Versuche, Mengen in g"][language]);
    const [, ...names] = putRow(sheet, top, 0, HEADS[language]!);
    if (top === 0) put(sheet, top, 0, ["Trial (g)", "Versuch (g)"][language]);
    put(sheet, top, 5, headings[language]);
    const kinds = Array.from({ length: 8 }, () => [
      ...[random.whole(50, 70) * 10, random.whole(10, 20) * 10, random.whole(2, 8) * 10],
      random.whole(1, 6) * 10,
    ]);
    return Array.from({ length: random.whole(20, 40) * 100 }, (_, index) => {
      const row = top + 1 + index;
      const [, ...amounts] = putRow(sheet, row, 0, [index + 1, ...random.pick(kinds)]);
      const call = formula(absolute(span(names)), span(amounts), a1(amounts[1]!));
      return put(sheet, row, 5, shown(call, "0.00"));
    });
  },
});

/** Thousands of calls where one would fill the column. */
export const singleCallMutations: readonly Mutation[] = [
  { rule: "many-single-calls", variants: CALLS.map(longTable), fair: {} },
];
