import { columnName } from "../../workbook/address";
import { NAMESPACE } from "../../worksheet/namespace";
import { calledOutside } from "../formulas/calledOutside";
import type { Finding } from "../finding";
import { findingAt } from "../findingAt";
import type { Rule } from "../rule";

const identity = { id: "many-single-calls", severity: "note" } as const;

/** From here on one call that fills the column is noticeably quicker to recalculate. */
const MANY = 1000;

interface Column {
  count: number;
  top: number;
  bottom: number;
}

export const manySingleCalls: Rule = {
  ...identity,
  title: "A column calls a function once a row where one call would fill it",
  find: ({ workbook }) =>
    workbook.sheets.flatMap((sheet) => {
      const columns = new Map<number, Column>();
      for (const { row, column, formula } of calledOutside(sheet)) {
        if (!formula.startsWith(`${NAMESPACE}.`)) continue;
        const seen = columns.get(column) ?? { count: 0, top: row, bottom: row };
        columns.set(column, { count: seen.count + 1, top: seen.top, bottom: row });
      }
      return [...columns].flatMap(([column, { count, top, bottom }]): Finding[] =>
        count < MANY
          ? []
          : [
              findingAt(
                identity,
                sheet,
                { top, bottom, left: column, right: column },
                {
                  message: `Column ${columnName(column)} holds ${count} single calls; one call with all rows as its amounts fills the column.`,
                  effect: null,
                  fix: "Hand all rows to one call, and let its answer fill the column.",
                },
              ),
            ],
      );
    }),
};
