import { normalName } from "../catalogue/normalName";
import type { Cell, Matrix } from "../foundation/cell";
import { isProblem } from "../foundation/problem";
import type { Workbook } from "../workbook/model";
import { callFunction } from "../worksheet/callFunction";
import { headedRanges, type HeadedRange } from "./recipes/headedRanges";
import type { WantedIce } from "./wantedIce";

/** A serving target that the workbook itself defines. */
export interface OwnTarget extends WantedIce {
  /** Its headers and its row, as RIME.CHECK takes a target. */
  readonly table: Matrix;
}

const REQUIRED = ["name", "temperature", "ice from", "ice to"];

/** Any mix that answers at every temperature: what RIME.CHECK refuses is then the target. */
const PLAIN_MIX = [
  [["water"], ["sucrose"]],
  [[800], [200]],
] as const;

/** A header as RIME.CHECK reads it: without a unit in brackets. */
const withoutUnit = (header: string): string => header.replace(/\s*[([].*[)\]]$/, "");

function targetsIn({ headers, matrix }: HeadedRange): (readonly [name: string, OwnTarget])[] {
  const columns = new Map(headers.map((header, column) => [withoutUnit(header), column]));
  if (!REQUIRED.every((header) => columns.has(header))) return [];
  const [head = [], ...rows] = matrix;
  return rows.flatMap((row) => {
    const table = [head, row];
    if (isProblem(callFunction("CHECK", ...PLAIN_MIX, table)[0]?.[0])) return [];
    const cell = (header: string): Cell => row[columns.get(header) ?? -1] ?? null;
    const text = (header: string): string => {
      const value = cell(header);
      return typeof value === "string" ? normalName(value) : "";
    };
    const wanted: OwnTarget = {
      temperatureC: Number(cell("temperature")),
      iceFrom: Number(cell("ice from")),
      iceTo: Number(cell("ice to")),
      basis: text("basis") === "mix" ? "mix" : "water",
      table,
    };
    return [[text("name"), wanted] as const];
  });
}

/** The targets of every range that is headed as RIME.CHECK wants it, by normal name; refused rows are left out. */
export const ownTargets = ({ sheets }: Workbook): ReadonlyMap<string, OwnTarget> =>
  new Map(sheets.flatMap(headedRanges).flatMap(targetsIn));
