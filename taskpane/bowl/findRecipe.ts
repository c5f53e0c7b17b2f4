import type { CellBlock } from "../host";
import { amountColumns, likelyAmounts, type AmountColumn } from "./amountColumns";
import { buildRecipe } from "./buildRecipe";
import { askWhich } from "./askWhich";
import { latticeOf, textAt, turned, type Lattice } from "./lattice";
import { isOwnHeader } from "./ownIngredients";
import { nameColumns, type NameColumn } from "./nameColumns";
import type { ColumnChoice, Recognition } from "./recognised";
import { headerRowAbove, isTotalName, recipeRows } from "./recipeRows";

export interface FindRecipeOptions {
  readonly isKnown: (name: string) => boolean;
  /** The selected cell within the block: decides between columns that are equally likely. */
  readonly active: { readonly row: number; readonly column: number } | null;
  readonly choice: ColumnChoice | null;
}

/** The way round in which more names are known; down when both are alike. */
function bestWay(block: CellBlock, isKnown: (name: string) => boolean) {
  const down = latticeOf(block);
  const across = turned(down);
  const [downNames, acrossNames] = [nameColumns(down, isKnown), nameColumns(across, isKnown)];
  const known = (names: readonly NameColumn[]) => names[0]?.knownRows.length ?? 0;
  return known(acrossNames) > known(downNames)
    ? { lattice: across, names: acrossNames }
    : { lattice: down, names: downNames };
}

function chosenNames(lattice: Lattice, column: number, isKnown: (name: string) => boolean) {
  const known = nameColumns(lattice, isKnown).find((names) => names.column === column);
  return known ?? { column, knownRows: [0] };
}

function withChoice(
  block: CellBlock,
  choice: ColumnChoice,
  options: FindRecipeOptions,
): Recognition {
  const down = latticeOf(block);
  const lattice = choice.direction === "down" ? down : turned(down);
  const names = chosenNames(lattice, choice.names, options.isKnown);
  const headerRow = headerRowAbove(lattice, names.column, names.knownRows[0] ?? 0);
  const columns = amountColumns(lattice, headerRow, names);
  const header = headerRow < 0 ? "" : textAt(lattice, headerRow, choice.amounts);
  const amounts = columns.find(({ column }) => column === choice.amounts) ?? {
    column: choice.amounts,
    header,
    meaning: { role: "unsaid" as const },
    origin: "header" as const,
  };
  return buildRecipe({ block, lattice, headerRow, names, amounts, ...options });
}

/**
 * Exactly one column, or the one that was clicked, or none. Across, where every row is a recipe, the first
 * one is as good as any: a click on another row shows that.
 */
function decide(lattice: Lattice, pool: readonly AmountColumn[], options: FindRecipeOptions) {
  const [first, ...others] = pool;
  if (first === undefined || others.length === 0) return first;
  const { active } = options;
  const clicked = lattice.direction === "down" ? active?.column : active?.row;
  const there = pool.find(({ column }) => column === clicked);
  return there ?? (lattice.direction === "across" ? first : undefined);
}

/** At least half of the names in the rows that would be taken are known. */
function halfKnown(
  lattice: Lattice,
  headerRow: number,
  names: NameColumn,
  amounts: number,
): boolean {
  const named = recipeRows(lattice, headerRow, names, amounts).rows.filter((row) => {
    const text = textAt(lattice, row, names.column);
    return text !== "" && !isTotalName(text);
  });
  const known = named.filter((row) => names.knownRows.includes(row));
  return known.length * 2 >= named.length;
}

const HEADER_ROWS_SEARCHED = 5;

const isOwnRange = (values: CellBlock["values"]): boolean =>
  values
    .slice(0, HEADER_ROWS_SEARCHED)
    .some((row) => isOwnHeader(row.map((value) => String(value).trim().toLowerCase())));

const isBlank = (block: CellBlock): boolean =>
  block.values.every((row) => row.every((value) => value === ""));

/** Finds the recipe in a block of cells, or what has to be asked to find it. */
export function findRecipe(block: CellBlock, options: FindRecipeOptions): Recognition {
  const place = { sheet: block.sheet, address: block.address };
  if (isBlank(block)) return { kind: "none", why: "blank", ...place };
  if (isOwnRange(block.values)) return { kind: "none", why: "own ingredients", ...place };
  if (options.choice !== null) return withChoice(block, options.choice, options);
  const { lattice, names: candidates } = bestWay(block, options.isKnown);
  const [names, rival] = candidates;
  if (names === undefined) return { kind: "none", why: "no names", ...place };
  const headerRow = headerRowAbove(lattice, names.column, names.knownRows[0] ?? 0);
  const pool = likelyAmounts(amountColumns(lattice, headerRow, names));
  const ask = (why: Parameters<typeof askWhich>[4]) =>
    askWhich(block, lattice, headerRow, { names: names.column, pool }, why);
  if (rival !== undefined && rival.knownRows.length === names.knownRows.length) {
    return ask("several names");
  }
  const amounts = decide(lattice, pool, options);
  if (amounts === undefined) return ask(pool.length === 0 ? "no amounts" : "several amounts");
  if (!halfKnown(lattice, headerRow, names, amounts.column)) return ask("few known");
  return buildRecipe({ block, lattice, headerRow, names, amounts, ...options });
}
