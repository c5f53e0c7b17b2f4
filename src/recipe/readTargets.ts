import { normalName } from "../catalogue/normalName";
import { badInput, isProblem } from "../foundation/problem";
import type { Cell, Matrix } from "../foundation/cell";
import type { Result } from "../foundation/result";
import type { Target } from "./checkTarget";
import type { Lattice } from "./lattice";
import { passedOn } from "./passedOn";
import { placeIn } from "./place";
import { shownCell } from "./shownCell";

const HEADERS = ["name", "temperature", "ice from", "ice to", "basis"] as const;
type Header = (typeof HEADERS)[number];

const plain = (cell: Cell | undefined): string =>
  typeof cell === "string" ? normalName(cell).replace(/\s*[([].*[)\]]$/, "") : "";

/** Whether a range for targets is led by headers, rather than holding names. */
export const isTargetTable = (range: Matrix): boolean =>
  range.length > 1 && (range[0] ?? []).some((cell) => plain(cell) === "temperature");

/** The targets of a header-led range, one a row. */
export function readTargets(argument: string, range: Matrix): Lattice<Target> {
  const [headers = [], ...rows] = range;
  const at = new Map(headers.map((cell, column) => [plain(cell), column]));
  const shape = { rows: range.length, columns: headers.length };
  const cells = rows.map((row, index): Result<Target> => {
    const missing = HEADERS.find((header) => header !== "basis" && !at.has(header));
    if (missing !== undefined) {
      return badInput(
        `${argument}: the first row has no header "${missing}"; ${HEADERS.join(", ")} are expected.`,
      );
    }
    const cellOf = (header: Header) => row[at.get(header) ?? -1] ?? null;
    const placeOf = (header: Header) => placeIn(argument, shape, index + 1, at.get(header) ?? 0);
    return targetOf(cellOf, placeOf);
  });
  return { rows: rows.length, columns: 1, cells };
}

function numberFrom(cell: Cell, place: string, from: number, to: number): Result<number> {
  if (isProblem(cell)) return passedOn(cell, place);
  if (typeof cell === "number" && cell >= from && cell <= to) return cell;
  const shown = cell === null ? "blank" : shownCell(cell);
  return badInput(`${place}: this is ${shown}; a number from ${from} to ${to} is expected.`);
}

function targetOf(
  cellOf: (header: Header) => Cell,
  placeOf: (header: Header) => string,
): Result<Target> {
  const name = cellOf("name");
  if (isProblem(name)) return passedOn(name, placeOf("name"));
  const temperatureC = numberFrom(cellOf("temperature"), placeOf("temperature"), -60, 40);
  if (isProblem(temperatureC)) return temperatureC;
  const iceFrom = numberFrom(cellOf("ice from"), placeOf("ice from"), 0, 1);
  if (isProblem(iceFrom)) return iceFrom;
  const iceTo = numberFrom(cellOf("ice to"), placeOf("ice to"), 0, 1);
  if (isProblem(iceTo)) return iceTo;
  if (iceFrom > iceTo) {
    return badInput(
      `${placeOf("ice to")}: ${iceTo} is less than ice from, ${iceFrom}; it must be at least that.`,
    );
  }
  const basis = cellOf("basis");
  if (isProblem(basis)) return passedOn(basis, placeOf("basis"));
  const word = basis === null ? "water" : normalName(String(basis));
  if (word !== "water" && word !== "mix") {
    return badInput(
      `${placeOf("basis")}: this is ${shownCell(basis ?? "")}; "water" or "mix" is expected.`,
    );
  }
  return {
    name: name === null ? "the target" : String(name).trim(),
    temperatureC,
    iceFrom,
    iceTo,
    basis: word,
  };
}
