import { componentGrams, freezingPointC } from "../answers";
import { numberEdit } from "../cellEdit";
import type { AuditContext } from "../context";
import { freezingEffect, rounded } from "../effect";
import type { Finding } from "../finding";
import { findingAt } from "../findingAt";
import { labelledNumbers } from "../labels";
import { catalogueName } from "../catalogueName";
import { plainWords } from "../recipes/plainWords";
import type { Rule } from "../rule";

const identity = { id: "water-not-counted", severity: "error" } as const;

const WATER_LABEL =
  /^(total |all |sum of )?(the )?(free )?(water|wasser)\b.*(\bg\b|gramm?|grams|total|gesamt|in (the )?(mix|recipe|batch))|^gesamtwasser/;

function isPlainWater(item: string, ownIngredients: Parameters<typeof catalogueName>[1]): boolean {
  return /^(water|wasser|ice|eis|tap water|leitungswasser)$/.test(
    plainWords(catalogueName(item, ownIngredients) ?? ""),
  );
}

function findAll(context: AuditContext): Finding[] {
  const labels = labelledNumbers(context.workbook, ["composition"]);
  return labels.flatMap(({ sheet, label, value, row, column }) => {
    const blocks = context.blocks.filter((block) => block.sheet === sheet);
    const [block] = blocks;
    const [recipe] = block?.recipes ?? [];
    const only = blocks.length === 1 && block?.recipes.length === 1;
    if (!only || recipe === undefined || !WATER_LABEL.test(plainWords(label))) return [];
    const mix = context.mixOf(block, recipe);
    const all = componentGrams(mix, "water");
    const plain = mix.items.reduce(
      (sum, item, at) => sum + (isPlainWater(item, mix.ownIngredients) ? (mix.grams[at] ?? 0) : 0),
      0,
    );
    const onlyPlain = plain > 0 && Math.abs(value / plain - 1) < 0.005;
    if (all === null || !onlyPlain || all < plain * 1.05) return [];
    const point = freezingPointC(mix);
    // To first order the depression goes with the water: the same solutes in less water.
    const effect = point === null ? null : freezingEffect((point * all) / plain, point);
    return findingAt(
      identity,
      sheet,
      { row, column },
      {
        message: `"${label}" counts the ${rounded(plain, 1)} g poured in; with the water in the other ingredients it is ${rounded(all, 1)} g.`,
        effect,
        fix: `Use ${rounded(all, 1)} g.`,
        edits: numberEdit(sheet, { row, column }, rounded(all, 1)),
      },
    );
  });
}

export const waterNotCounted: Rule = {
  ...identity,
  title: "The water inside the ingredients is not counted",
  find: findAll,
};
