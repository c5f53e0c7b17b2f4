import type { WorkbookSheet } from "../../../workbook/model";
import { textAt } from "../cells";
import { sheetTexts } from "../sheetTexts";

/** "z: particles of one formula unit", "k = Teilchenzahl", "z ist die Zahl der Teilchen". */
const EXPLANATION =
  /^(\p{L}{1,2})(?:\s?(?::|=|[–-](?=\s))| (?:is|means|stands for|ist|sind|bedeutet|hei(?:ß|ss)t|steht für)\b)\s*(\p{L}{2}.*)$/u;

/** A letter that chemists need not explain. */
const WITHOUT_NOTE: ReadonlyMap<string, string> = new Map([["ν", "number of particles"]]);

const known = new WeakMap<WorkbookSheet, ReadonlyMap<string, string>>();

function explanationsOn(sheet: WorkbookSheet): ReadonlyMap<string, string> {
  const found = known.get(sheet) ?? new Map(explanationsIn(sheet));
  known.set(sheet, found);
  return found;
}

const explanationsIn = (sheet: WorkbookSheet): readonly (readonly [string, string])[] =>
  [...sheetTexts(sheet).columnsByRow].flatMap(([row, columns]) =>
    columns.flatMap((column) => {
      const [, letter, words] = EXPLANATION.exec(textAt(sheet, row, column)) ?? [];
      return letter === undefined || words === undefined ? [] : [[letter, words] as const];
    }),
  );

/** What a letter in a heading stands for, by a note on the sheet or by itself; null where nothing tells. */
export const explainedLetter = (sheet: WorkbookSheet, heading: string): string | null =>
  heading.length > 2
    ? null
    : (explanationsOn(sheet).get(heading) ?? WITHOUT_NOTE.get(heading) ?? null);
