import { normalName } from "../../catalogue/normalName";
import type { Matrix } from "../../foundation/cell";
import { isProblem } from "../../foundation/problem";
import type { Workbook } from "../../workbook/model";
import { ownTargetRows } from "../../worksheet/ownTargetRows";
import { headedRanges, type HeadedRange } from "../recipes/headedRanges";
import type { WantedIce } from "../temperatures/wantedIce";

/** A serving target that the workbook itself defines. */
export interface OwnTarget extends WantedIce {
  /** Its headers and its row, as RIME.CHECK takes a target. */
  readonly table: Matrix;
}

function targetsIn({ matrix }: HeadedRange): (readonly [name: string, OwnTarget])[] {
  const [headers = [], ...rows] = matrix;
  return ownTargetRows(matrix).flatMap((target, at) =>
    isProblem(target)
      ? []
      : [[normalName(target.name), { ...target, table: [headers, rows[at] ?? []] }] as const],
  );
}

/** The targets of every range that is headed as RIME.CHECK wants it, by normal name; refused rows are left out. */
export const ownTargets = ({ sheets }: Workbook): ReadonlyMap<string, OwnTarget> =>
  new Map(sheets.flatMap(headedRanges).flatMap(targetsIn));
