import { cellName } from "../../workbook/address";
import { circularCells, type CircularPlace } from "../../workbook/circularCells";
import type { Workbook } from "../../workbook/model";
import type { Finding } from "../finding";
import { findingAt } from "../findingAt";
import type { Rule } from "../rule";

const identity = { id: "circular-reference", severity: "warning" } as const;

const SHOWN = 6;

function finding(workbook: Workbook, circle: readonly CircularPlace[]): Finding[] {
  const [first] = circle;
  const home = first === undefined ? undefined : workbook.sheets[first.sheet];
  if (first === undefined || home === undefined) return [];
  const named = circle.slice(0, SHOWN).map(({ sheet, row, column }) => {
    const cell = cellName(row, column);
    return sheet === first.sheet ? cell : `${workbook.sheets[sheet]?.name ?? ""}!${cell}`;
  });
  const way = [...named, ...(circle.length > SHOWN ? ["…"] : []), named[0]].join(" → ");
  return [
    findingAt(identity, home, first, {
      message: `${named[0]} needs its own answer: ${way}; a spreadsheet shows 0 or the last value there.`,
      effect: null,
      fix: "Break the circle: let one of these cells hold a number or read other cells.",
    }),
  ];
}

export const circularReference: Rule = {
  ...identity,
  title: "A formula needs its own answer",
  find: ({ workbook }) => circularCells(workbook).flatMap((circle) => finding(workbook, circle)),
};
