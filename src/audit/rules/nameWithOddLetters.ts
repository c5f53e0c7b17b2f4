import { cellName } from "../../workbook/address";
import { cellEdit } from "../cellEdit";
import type { AuditContext } from "../context";
import { mixEffect } from "../effect";
import type { Effect, Finding } from "../finding";
import { findingAt } from "../findingAt";
import { meantMix } from "../mix";
import { amountOf } from "../recipes/amounts/amountOf";
import { cleanText } from "../recipes/headings/cleanText";
import { foldedName, UNSEEN } from "../recipes/names/foldedName";
import type { RecipeBlock, RecipeName } from "../recipes/recipeBlock";
import type { Rule } from "../rule";

const identity = { id: "name-with-odd-letters", severity: "warning" } as const;

const tidied = (text: string): string => text.replace(/[\s\u00a0\u2007\u202f]+/g, " ").trim();

/** What is odd about a name as it is stored; null when nothing is. Nobody looks up a label that has more in it than the name. */
function oddity(stored: string, right: string, isBare: boolean): string | null {
  if (foldedName(stored).replace(UNSEEN, "") !== stored.replace(UNSEEN, ""))
    return "letters or digits that only look like the right ones";
  if (UNSEEN.test(stored)) return "a sign that is not seen";
  if (!isBare) return null;
  if (/[\u00a0\u2007\u202f]/.test(stored)) return "a blank that is none for a look-up";
  if (stored !== stored.trim()) return `a blank ${/^\s/.test(stored) ? "before" : "after"} it`;
  return / {2}/.test(stored) ? "two blanks in a row" : null; // a line break is seen
}

/** Where the name is not understood as it stands: the mix without it and with it. */
function effectOf(
  context: AuditContext,
  block: RecipeBlock,
  name: RecipeName,
  right: string,
): Effect | null {
  const check = context.checkFor(block);
  if (check(name.item).kind !== "unknown" || check(right).kind === "unknown") return null;
  const recipe = block.recipes
    .slice(0, 100)
    .find((one) => (amountOf(block, one, name).grams ?? 0) > 0);
  if (recipe === undefined) return null;
  const names = block.names.map((one) => (one === name ? { ...one, item: right } : one));
  return mixEffect(context.mixOf(block, recipe), meantMix({ ...block, names }, recipe, check));
}

function finding(context: AuditContext, block: RecipeBlock, name: RecipeName): Finding | null {
  const stored = block.sheet.cellAt(name.row, name.column)?.value;
  if (typeof stored !== "string") return null;
  const folded = tidied(foldedName(stored));
  // A digit or a foreign letter may belong to a name that is written so: only what makes it known is odd.
  const isKnown = context.checkFor(block)(foldedName(name.item)).kind !== "unknown";
  const right = isKnown ? folded : tidied(stored.replace(UNSEEN, ""));
  if (right === stored) return null;
  const what = oddity(stored, right, cleanText(stored) === name.item);
  if (what === null) return null;
  return findingAt(identity, block.sheet, name, {
    message: `The name "${tidied(stored)}" in ${cellName(name.row, name.column)} has ${what}: look-ups and comparisons do not find it.`,
    effect: effectOf(context, block, name, foldedName(name.item)),
    fix: `Write "${right}".`,
    edits: cellEdit(block.sheet, name, right),
  });
}

export const nameWithOddLetters: Rule = {
  ...identity,
  title: "A name has blanks or letters that are not what they seem",
  find: (context) =>
    context.blocks.flatMap((block) =>
      block.names.flatMap((name) => finding(context, block, name) ?? []),
    ),
};
