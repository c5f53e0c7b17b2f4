import { parseCellName } from "../../workbook/address";
import type { Place, RecipeBlock } from "../recipes/recipeBlock";
import { powerOfMass, type CellOnSheet } from "./powerOfMass";

const FACTOR =
  /([*/]?)\s*(?:(?:('(?:[^']|'')+'|[\p{L}_][\p{L}\p{N}_.]*)!)?(\$?[A-Z]{1,3}\$?\d{1,7})|(\d+(?:\.\d+)?))\s*/giuy;

/** A tenth more, a twentieth less: a number, whatever it is worked out from. */
const MORE_OR_LESS = /\(\s*1\s*[-+][^()]*\)/g;

/** "SUM(B3:B5)", "(B3-B5)", "(B3+2)": a sum is in the unit of the first that it adds. */
const SUM_OF_CELLS =
  /(?<![\p{L}\d_.])(?:SUM\((\$?[A-Z]{1,3}\$?\d+)(?::[A-Z\d$]+)?\)|\(\s*(\$?[A-Z]{1,3}\$?\d+)(?:\s*[-+]\s*(?:\$?[A-Z]{1,3}\$?\d+|[\d.]+))+\s*\))/giu;

/** Nobody loses more than half, or makes half as much again in reserve. */
const MOST_MORE = 0.5;

interface Factor {
  readonly sign: 1 | -1;
  /** Null for a number; its sheet is null for the formula's own. */
  readonly cell: (Place & { readonly sheet: string | null }) | null;
  /** Whether it is a number that may stand for a mass, as 1000 does for a kilo; one near 1 is a loss or a reserve. */
  readonly mayBeMass: boolean;
}

/** A formula that only multiplies and divides cells, by its factors; null for others. */
function factorsOf(formula: string): Factor[] | null {
  const products = formula.replaceAll(SUM_OF_CELLS, "$1$2");
  // What is divided by a product is left alone.
  if (/\/\s*\(/.test(products)) return null;
  const plain = products.replaceAll(MORE_OR_LESS, "1").replaceAll(/[()]/g, "");
  const factors: Factor[] = [];
  FACTOR.lastIndex = 0;
  while (FACTOR.lastIndex < plain.length) {
    const [all, operator, home, name, number] = FACTOR.exec(plain) ?? [];
    if (all === undefined || (operator === "") !== (factors.length === 0)) return null;
    const place = name === undefined ? null : parseCellName(name.replaceAll("$", ""));
    const sheet = home?.replace(/^'(.*)'$/, "$1").replaceAll("''", "'") ?? null;
    const mayBeMass = number !== undefined && Math.abs(Number(number) - 1) > MOST_MORE;
    const cell = place && { ...place, sheet };
    factors.push({ sign: operator === "/" ? -1 : 1, cell, mayBeMass });
  }
  return factors;
}

/**
 * The power with which a mass stands in the unit of one factor of a product or quotient: grams per gram of the list
 * times a batch are grams only if the batch is so many grams, and grams of the list times cups only if they are counted.
 * Null when the other units do not say, or when a number may stand for one.
 */
export function powerByFormula(
  blocks: readonly RecipeBlock[],
  answer: CellOnSheet,
  formula: string,
  input: CellOnSheet,
): 0 | 1 | null {
  const factors = factorsOf(formula);
  let open: number | null = powerOfMass(blocks, answer);
  if (factors === null || open === null) return null;
  const sheets = [answer.sheet, input.sheet, ...blocks.map(({ sheet }) => sheet)];
  let own = 0;
  for (const { sign, cell } of factors) {
    if (cell === null) continue;
    const sheet = sheets.find(({ name }) => name === (cell.sheet ?? answer.sheet.name));
    if (sheet === input.sheet && cell.row === input.row && cell.column === input.column)
      own += sign;
    else {
      const power = sheet === undefined ? null : powerOfMass(blocks, { ...cell, sheet });
      if (power === null) return null;
      open -= sign * power;
    }
  }
  if (own === 0) return null;
  if (open === own) return 1;
  return open === 0 && !factors.some(({ mayBeMass }) => mayBeMass) ? 0 : null;
}
