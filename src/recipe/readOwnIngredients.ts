import { normalName } from "../catalogue/normalName";
import { badInput, isProblem, type Problem } from "../foundation/problem";
import type { Cell, Matrix } from "../foundation/cell";
import type { Result } from "../foundation/result";
import type { Item } from "./item";
import { namedItem, NO_OWN_INGREDIENTS, shortened, type OwnIngredients } from "./namedItem";
import { ownContent } from "./ownContent";
import { ownColumn, type OwnColumn } from "./ownHeaders";
import { ownRow, type OwnRow } from "./ownRow";
import { passedOn } from "./passedOn";
import { placeIn } from "./place";

const ARGUMENT = "ownIngredients";

/** Reads the header row; a problem when `name` is missing, twice there, or a header is nearly one of ours. */
function columnsOf(
  header: readonly Cell[],
  placeOf: (column: number) => string,
): Result<OwnColumn[]> {
  const columns: OwnColumn[] = [];
  for (const [at, cell] of header.entries()) {
    if (isProblem(cell)) return passedOn(cell, placeOf(at));
    const column = typeof cell === "string" ? ownColumn(cell, placeOf(at)) : null;
    if (isProblem(column)) return column;
    const before = columns.findIndex((other) => other !== null && sameColumn(other, column));
    if (before >= 0) {
      return badInput(
        `${placeOf(at)}: the header "${shortened(String(cell))}" means the same as that of column ${before + 1}; each is expected once.`,
      );
    }
    columns.push(column);
  }
  if (columns.includes("name")) return columns;
  return badInput(
    `${ARGUMENT}: the first row has no header "name"; a range with its header row, such as Table[#All], is expected.`,
  );
}

const sameColumn = (a: OwnColumn, b: OwnColumn): boolean =>
  typeof a === "object" && typeof b === "object" ? a?.solute === b?.solute : a === b;

/** An entry that is another name for something of the catalogue. */
function sameAs(row: OwnRow, name: string, catalogueName: string, place: string): Result<Item> {
  const more = [...Object.keys(row.numbers), ...row.solutes.map(([{ name: solute }]) => solute)];
  if (row.texts.allergens) more.push("allergens");
  if (more.length > 0) {
    return badInput(
      `${place}: "${name}" is given as the same as "${shortened(catalogueName)}" and also ${more.join(", ")}; nothing else is expected then.`,
    );
  }
  const item = namedItem(catalogueName, NO_OWN_INGREDIENTS, place);
  return isProblem(item) ? item : { ...item, name };
}

function ownItem(row: OwnRow, name: string, place: string): Result<Item> {
  const { texts, numbers } = row;
  if (texts["same as"]) return sameAs(row, name, texts["same as"], place);
  const found = ownContent(row);
  if (isProblem(found)) return { ...found, message: `${place} ("${name}"): ${found.message}` };
  const gramsPerMl = numbers["g per mL"];
  const gramsPerPiece = numbers["g per piece"];
  return {
    name,
    ...found,
    spread: {},
    facts: {
      allergens: "unknown",
      cautions: [],
      ...(gramsPerMl !== undefined && { gramsPerMl: { value: gramsPerMl, relativeSpread: 0 } }),
      ...(gramsPerPiece !== undefined && {
        gramsPerPiece: { value: gramsPerPiece, piece: "piece" },
      }),
    },
    allergenText: texts.allergens ?? null,
    cautionText: texts.cautions ?? null,
    source: texts.source ?? "the user's own range; no source stated",
    origin: { kind: "own" },
  };
}

/**
 * The user's own ingredients from a range whose first row holds headers. A row that cannot be read spoils its
 * own name only; a header row that cannot be read, or a row without a name, spoils the range.
 */
export function readOwnIngredients(range: Matrix): Result<OwnIngredients> {
  const shape = { rows: range.length, columns: range[0]?.length ?? 0 };
  const placeOf = (row: number) => (column: number) => placeIn(ARGUMENT, shape, row, column);
  const columns = columnsOf(range[0] ?? [], placeOf(0));
  if (isProblem(columns)) return columns;
  const nameAt = columns.indexOf("name");
  const own = new Map<string, Result<Item>>();
  for (const [at, cells] of range.entries()) {
    if (at === 0 || cells.every((cell) => cell === null)) continue;
    const name = nameOf(cells, nameAt, placeOf(at));
    if (isProblem(name)) return name;
    const row = ownRow(cells, columns, placeOf(at));
    const place = `${ARGUMENT}, row ${at + 1}`;
    const key = normalName(name);
    own.set(
      key,
      own.has(key) ? twice(name, place) : isProblem(row) ? row : ownItem(row, name, place),
    );
  }
  return own;
}

const twice = (name: string, place: string): Problem =>
  badInput(`${place}: "${name}" is given more than once; each name is expected once.`);

function nameOf(
  cells: readonly Cell[],
  nameAt: number,
  placeOf: (column: number) => string,
): Result<string> {
  const cell = cells[nameAt] ?? null;
  if (isProblem(cell)) return passedOn(cell, placeOf(nameAt));
  if (typeof cell === "string") return cell.trim();
  const shown = cell === null ? "blank" : String(cell).toUpperCase();
  return badInput(`${placeOf(nameAt)}: the name is ${shown}; a text is expected.`);
}
