import { cellName } from "../../workbook/address";
import { NAMESPACE } from "../../worksheet/namespace";
import { componentPer100, numberFrom } from "../answers";
import { formulaEdit, numberEdit } from "../cellEdit";
import type { AuditContext } from "../context";
import { mixEffect, rounded } from "../effect";
import type { CellEdit, Finding } from "../finding";
import { findingAt } from "../findingAt";
import { misreadingOf } from "../misreadParts";
import type { Mix } from "../mix";
import { amountOf } from "../recipes/amountOf";
import type { Role } from "../recipes/headerRole";
import type { Place, RecipeBlock, RecipeName } from "../recipes/recipeBlock";
import type { Rule } from "../rule";
import { statedParts, type StatedPart } from "../statedParts";

const identity = { id: "abv-as-mass", severity: "error" } as const;

const columnOf = (block: RecipeBlock, role: Role) =>
  [...block.roles].find(([, one]) => one === role)?.[0];

const numberAt = (block: RecipeBlock, row: number, column: number | undefined): number | null => {
  const value = column === undefined ? null : block.sheet.cellAt(row, column)?.value;
  return typeof value === "number" ? value : null;
};

/** Typed grams are put right; a formula gets the function that turns a strength by volume into one by mass. */
function editsOf(
  { sheet }: RecipeBlock,
  place: Place,
  abvColumn: number | undefined,
  rightGrams: number,
): readonly CellEdit[] {
  const cell = sheet.cellAt(place.row, place.column);
  if (cell?.formula === undefined) return numberEdit(sheet, place, rounded(rightGrams, 2));
  const abv = cellName(place.row, abvColumn ?? 0).replace(/(\d+)/, "\\$?$1");
  const share = new RegExp(`\\$?${abv}\\s*(/\\s*100|%|\\*\\s*0\\.01)(?![\\w.])`, "i");
  const strength = sheet.cellAt(place.row, abvColumn ?? 0)?.value;
  const fraction = numberFrom("ABVTOMASSFRACTION", strength);
  const gives = (typeof cell.value === "number" ? cell.value : 0) * (fraction ?? 0);
  const expected = (rightGrams * (typeof strength === "number" ? strength : 0)) / 100;
  // In a liqueur the sugar makes the same strength a smaller share: there a person decides.
  if (!share.test(cell.formula) || Math.abs(gives / expected - 1) > 0.02) return [];
  const called = `${NAMESPACE}.ABVTOMASSFRACTION(${cellName(place.row, abvColumn ?? 0)})`;
  return formulaEdit(sheet, place, cell.formula.replace(share, called));
}

function finding(context: AuditContext, block: RecipeBlock, name: RecipeName): Finding | null {
  const [abvColumn, ethanolColumn] = [columnOf(block, "abv"), columnOf(block, "ethanol")];
  const written = numberAt(block, name.row, abvColumn);
  const ethanol = numberAt(block, name.row, ethanolColumn);
  const [recipe] = block.recipes;
  const grams = recipe === undefined ? null : amountOf(block, recipe, name).grams;
  if (
    written === null ||
    ethanol === null ||
    !grams ||
    recipe === undefined ||
    ethanolColumn === undefined
  )
    return null;
  const abvPercent = written <= 1 ? written * 100 : written; // a share shown in percent
  const right = componentPer100(name.item, "ethanol", block.ownIngredients);
  const byVolume = Math.abs(ethanol / (grams * abvPercent * 0.01) - 1) < 0.005;
  if (right === null || right < 1 || !byVolume) return null;
  const rightGrams = (grams * right) / 100;
  if (ethanol < rightGrams * 1.05) return null;
  const meant = context.mixOf(block, recipe);
  const mistaken = {
    ...meant,
    items: [...meant.items, "ethanol"],
    grams: [...meant.grams, ethanol - rightGrams],
  };
  return findingAt(
    identity,
    block.sheet,
    { row: name.row, column: ethanolColumn },
    {
      message: `The alcohol in ${name.item} is taken as ${rounded(abvPercent, 1)} % of its mass, but that is its share by volume: ${rounded(right, 1)} % by mass.`,
      effect: mixEffect(mistaken, meant),
      fix: `Use ${rounded(rightGrams, 2)} g of ethanol.`,
      edits: editsOf(block, { row: name.row, column: ethanolColumn }, abvColumn, rightGrams),
    },
  );
}

/** The alcohol of a recipe, summed up from strengths by volume. */
function partFinding(stated: StatedPart): Finding[] {
  const { sheet, label, value, right, mix, basis, factor } = stated;
  if (misreadingOf(stated) !== "by volume" || right < 0.5) return [];
  const ethanol = basis === "g" ? value : (value * total(mix)) / 100;
  const rightGrams = basis === "g" ? right : (right * total(mix)) / 100;
  const extra = Math.max(0, ethanol - rightGrams);
  const mistaken = { ...mix, items: [...mix.items, "ethanol"], grams: [...mix.grams, extra] };
  return [
    findingAt(identity, sheet, stated, {
      message: `"${label}" takes the strength by volume as a share of the mass: it is ${rounded(value, 1)}, by mass ${rounded(right, 1)}.`,
      effect: mixEffect(mistaken, mix),
      fix: `Enter ${rounded(right / factor, 2)}.`,
      edits: numberEdit(sheet, stated, rounded(right / factor, 4)),
    }),
  ];
}

const total = ({ grams }: Mix): number => grams.reduce((sum, one) => sum + one, 0);

export const abvAsMass: Rule = {
  ...identity,
  title: "Alcohol by volume is used as a share of the mass",
  find: (context) => [
    ...context.blocks
      .filter(({ layout }) => layout === "down")
      .flatMap((block) => block.names.flatMap((name) => finding(context, block, name) ?? [])),
    ...statedParts(context).flatMap(partFinding),
  ],
};
