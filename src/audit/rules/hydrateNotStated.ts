import { contains, referencesOf } from "../../workbook/references";
import type { AuditContext } from "../context";
import { freezingPointC } from "../answers/answers";
import { mixEffect } from "../effect";
import type { Finding } from "../finding";
import { findingAt } from "../findingAt";
import { hydrateReadings } from "../solutions/hydrates";
import { lostByName } from "../amounts/lostByName";
import { amountOf } from "../recipes/amounts/amountOf";
import {
  amountPlace,
  type Recipe,
  type RecipeBlock,
  type RecipeName,
} from "../recipes/recipeBlock";
import { withoutExtracts } from "../recipes/names/withoutExtracts";
import { meantMix } from "../mix";
import type { Rule } from "../rule";

const identity = { id: "hydrate-not-stated", severity: "warning" } as const;

/** Where the tool takes the usual reading, a smaller difference than this is not worth a word. */
const WORTH_SAYING_K = 0.05;
/** Of so little of the mix crystal water changes nothing at all. */
const PINCH_SHARE = 0.008;

/** The first recipe of the block that has some of it. */
function recipeWith(block: RecipeBlock, name: RecipeName): Recipe | undefined {
  return block.recipes
    .slice(0, 100)
    .find((recipe) => (amountOf(block, recipe, name).grams ?? 0) > 0);
}

function finding(context: AuditContext, block: RecipeBlock, name: RecipeName): Finding | null {
  const check = context.checkFor(block);
  const readings = hydrateReadings(name.item, check(name.item));
  if (readings === null) return null;
  const said = {
    message: `"${name.item}" does not say whether it is ${readings.anhydrous} or ${readings.hydrate}, which brings its own water.`,
    fix: `Write "${readings.hydrate}" or "${readings.anhydrous}", as the bag says.`,
  };
  const recipe = recipeWith(block, name);
  if (recipe === undefined) {
    const effect = lostByName(context, block, name);
    return effect === null ? null : findingAt(identity, block.sheet, name, { ...said, effect });
  }
  const read = (item: string) => {
    const names = block.names.map((one) => (one === name ? { ...one, item } : one));
    return meantMix({ ...block, names }, recipe, check);
  };
  const [anhydrous, hydrate] = [read(readings.anhydrous), read(readings.hydrate)];
  const [dryC, wetC] = [freezingPointC(anhydrous), freezingPointC(hydrate)];
  const small = dryC === null || wetC === null || Math.abs(dryC - wetC) < WORTH_SAYING_K;
  const whole = anhydrous.grams.reduce((sum, grams) => sum + grams, 0);
  const isPinch = (amountOf(block, recipe, name).grams ?? 0) < PINCH_SHARE * whole;
  if (!readings.declined && small && isPinch) return null;
  return findingAt(identity, block.sheet, name, {
    ...said,
    effect: mixEffect(anhydrous, hydrate),
  });
}

/** Whether an amount is worked out from that of the same name in another list, where it is told. */
function isToldBefore({ blocks }: AuditContext, block: RecipeBlock, name: RecipeName): boolean {
  const recipe = recipeWith(block, name);
  if (recipe === undefined) return false;
  const { row, column } = amountPlace(block, recipe, name);
  const read = referencesOf(block.sheet.cellAt(row, column)?.formula ?? "");
  return blocks.some((other) => {
    const cells = read.filter(({ sheet }) => (sheet ?? block.sheet.name) === other.sheet.name);
    const again = cells.length === 0 ? [] : other.names.filter(({ item }) => item === name.item);
    return again.some(
      (one) =>
        other !== block &&
        other.recipes.some((each) => {
          const at = amountPlace(other, each, one);
          return cells.some(({ range }) => contains(range, at.row, at.column));
        }),
    );
  });
}

export const hydrateNotStated: Rule = {
  ...identity,
  title: "A name leaves open whether crystal water is in it",
  find: (context) =>
    withoutExtracts(context.blocks).flatMap((block) =>
      block.names.flatMap((name) => {
        const found = finding(context, block, name);
        return found === null || isToldBefore(context, block, name) ? [] : found;
      }),
    ),
};
