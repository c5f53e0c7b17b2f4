import { cellName } from "../../workbook/address";
import type { AuditContext } from "../context";
import { mixEffect } from "../effect";
import type { Finding } from "../finding";
import { findingAt } from "../findingAt";
import { changedMix } from "../mix";
import { amountOf, type Amount } from "../recipes/amounts/amountOf";
import type { AmountText } from "../recipes/amounts/amountText";
import { textAt } from "../recipes/cells";
import {
  amountPlace,
  type Recipe,
  type RecipeBlock,
  type RecipeName,
} from "../recipes/recipeBlock";
import type { Rule } from "../rule";
import { effectOfText } from "../textNumbers/effectOfText";
import { isPlainText } from "../textNumbers/numberText";
import { textNumbersElsewhere, type TextNumber } from "../textNumbers/textNumbersElsewhere";

const identity = { id: "number-as-text", severity: "error" } as const;

const WHY = {
  "decimal comma": "with a decimal comma that this sheet does not read",
  "unit in the cell": "with its unit in the same cell",
  "stored as text": "stored as text",
} as const;

/** "1,200" may be a thousand, and a unit in the cell another than the column's: then a person decides. */
const isPlain = ({ unit }: AmountText, typed: string, recipe: Recipe): boolean =>
  !/[.,]\d{3}\s*\D*$/.test(typed.trim()) &&
  (unit === null || (unit === recipe.unit && !recipe.unitAssumed));

function finding(
  context: AuditContext,
  block: RecipeBlock,
  recipe: Recipe,
  name: RecipeName,
  amount: Amount,
): Finding | null {
  if (amount.asText === null) return null;
  const typed = textAt(block.sheet, amount.row, amount.column);
  const stored = block.sheet.cellAt(amount.row, amount.column)?.value; // blanks around it included
  const meant = context.mixOf(block, recipe);
  const uncounted = changedMix(meant, name, { grams: 0 });
  const address = cellName(amount.row, amount.column);
  return findingAt(identity, block.sheet, amount, {
    message: `${address} holds the amount of ${name.item} as the text "${typed}", ${WHY[amount.asText.why]}: sums leave it out.`,
    effect: mixEffect(uncounted, meant),
    fix: `Enter ${amount.asText.number} as a number.`,
    ...(isPlain(amount.asText, typed, recipe) &&
      typeof stored === "string" && {
        edits: [{ sheet: block.sheet.name, cell: address, from: stored, to: amount.asText.number }],
      }),
  });
}

/** A recipe whose amounts are all text is a written list, not a calculation: nothing is summed wrongly. */
const isNumber = ({ grams, asText }: Amount): boolean => grams !== null && asText === null;

function findIn(context: AuditContext, block: RecipeBlock, recipe: Recipe): Finding[] {
  const texts = block.names.filter((name) => {
    const { row, column } = amountPlace(block, recipe, name);
    return typeof block.sheet.cellAt(row, column)?.value === "string";
  });
  if (texts.length === 0 || !block.names.some((name) => isNumber(amountOf(block, recipe, name))))
    return [];
  return texts.flatMap(
    (name) => finding(context, block, recipe, name, amountOf(block, recipe, name)) ?? [],
  );
}

/** A price, a temperature, a share, a result or an input. */
function elsewhere(found: TextNumber): Finding {
  const { sheet, text, read, label, row, column } = found;
  const address = cellName(row, column);
  return findingAt(identity, sheet, found, {
    message:
      label === ""
        ? `${address} holds the text "${text.trim()}", ${WHY[read.why]}: nothing can be calculated with it.`
        : `${address} holds the text "${text.trim()}" for "${label.slice(0, 60)}", ${WHY[read.why]}: nothing can be calculated with it.`,
    effect: effectOfText(found),
    fix: `Enter ${read.number} as a number.`,
    ...(isPlainText(text) && {
      edits: [{ sheet: sheet.name, cell: address, from: text, to: read.number }],
    }),
  });
}

export const textNumber: Rule = {
  ...identity,
  title: "A number is a text, so the sheet does not count it",
  find: (context) => [
    ...context.blocks.flatMap((block) =>
      block.recipes.flatMap((recipe) => findIn(context, block, recipe)),
    ),
    ...textNumbersElsewhere(context).map(elsewhere),
  ],
};
