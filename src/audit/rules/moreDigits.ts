import { cellName } from "../../workbook/address";
import type { WorkbookCell } from "../../workbook/model";
import { numberEdit } from "../cellEdit";
import { decimalsOf } from "../decimalsOf";
import type { AuditContext } from "../context";
import { rounded } from "../effect";
import type { CellEdit, Finding } from "../finding";
import { findingAt } from "../findingAt";
import { amountOf } from "../recipes/amounts/amountOf";
import { unitFromFormat, unitText } from "../recipes/amounts/unit";
import { unitColumnOf } from "../recipes/amounts/unitColumnOf";
import {
  amountPlace,
  type Place,
  type Recipe,
  type RecipeBlock,
  type RecipeName,
} from "../recipes/recipeBlock";
import { saysMass } from "../amounts/saysMass";
import { shareLines } from "../amounts/shareLines";
import type { StatedResult } from "../answers/statedResults";
import type { Rule } from "../rule";
import type { WorkbookSheet } from "../../workbook/model";

const identity = { id: "more-digits-than-known", severity: "note" } as const;

/** Decimals that an amount can have: a tenth of a gram is what a kitchen scale shows. Common practice, no source. */
const AMOUNT_DECIMALS: Readonly<Record<string, number>> = {
  g: 2,
  kg: 5,
  oz: 3,
  lb: 4,
  "%": 3,
  fraction: 5,
};

/** Decimals that a computed answer can have: real recipes are known to a few hundredths of a kelvin at best. */
const RESULT_DECIMALS: Readonly<Record<StatedResult["unit"], number>> = {
  ...{ "°C": 3, "°F": 3, K: 3, "mol/kg": 4, fraction: 4, "%": 2 },
};

/** The decimals a cell claims: those of its format, else those typed; a formula without a format claims none. */
function claimed({ value, format, formula }: WorkbookCell): number | null {
  if (typeof value !== "number") return null;
  const [section = ""] = (format ?? "").replace(/"[^"]*"|\\./g, "").split(";");
  const shown = /[0#]/.test(section) ? (/\.([0#?]+)/.exec(section)?.[1]?.length ?? 0) : null;
  if (shown !== null) return /%/.test(section) ? shown + 2 : shown;
  return formula === undefined ? decimalsOf(value) : null;
}

/** A typed number can be rounded; what a format or a formula shows is its owner's to change. */
function roundingEdit(sheet: WorkbookSheet, place: Place, most: number): readonly CellEdit[] {
  const cell = sheet.cellAt(place.row, place.column);
  const value = cell?.value;
  const isTyped = typeof value === "number" && decimalsOf(value) > most;
  if (!isTyped || cell === undefined || claimed({ value }) !== claimed(cell)) return [];
  return numberEdit(sheet, place, rounded(value, most));
}

const typedDecimals = ({ value }: WorkbookCell): number =>
  typeof value === "number" ? decimalsOf(value) : 0;

function findingFor(
  sheet: WorkbookSheet,
  place: Place,
  most: number | undefined,
  unit: string,
  areAmounts = false,
): Finding[] {
  const cell = sheet.cellAt(place.row, place.column);
  const shown = cell === undefined ? null : claimed(cell);
  const isTyped = areAmounts && cell?.formula === undefined && typeof cell?.value === "number";
  // A format hides the digits of an amount, which still go into every sum.
  const decimals = isTyped && shown !== null ? Math.max(shown, typedDecimals(cell)) : shown;
  if (decimals === null || most === undefined || decimals <= most) return [];
  return [
    findingAt(identity, sheet, place, {
      message: `${cellName(place.row, place.column)} claims ${decimals} decimals of ${unit}; what it is made from is known to ${most} at most.`,
      effect: null,
      fix: `Show ${most} decimals or fewer.`,
      edits: roundingEdit(sheet, place, most),
    }),
  ];
}

/** How many decimals an amount can have depends on its unit: where none is written, nothing is told. */
function isUnitGuessed(block: RecipeBlock, recipe: Recipe, name: RecipeName): boolean {
  if (!recipe.unitAssumed || name.unit !== undefined) return false;
  const { row, column } = amountPlace(block, recipe, name);
  const isShown = unitFromFormat(block.sheet.cellAt(row, column)?.format) !== null;
  return !isShown && unitColumnOf(block, recipe) === null && !saysMass(block.sheet);
}

/** A ledger of thousands of recipes is looked at by its first ones. */
const MOST_RECIPES = 1000;

/** Shares that stand beside the grams are amounts, too. */
const sharesBeside = (block: RecipeBlock): Finding[] =>
  shareLines(block)
    .filter(({ recipe }) => recipe === null)
    .flatMap(({ sheet, shares, whole }) => {
      const unit = whole === 1 ? "fraction" : "%";
      return shares.flatMap(({ place }) =>
        findingFor(sheet, place, AMOUNT_DECIMALS[unit], unit, true),
      );
    });

function findAll({ blocks, results }: AuditContext): Finding[] {
  const amounts = blocks.flatMap((block) =>
    block.recipes.slice(0, MOST_RECIPES).flatMap((recipe) => {
      return block.names.flatMap((name) => {
        if (isUnitGuessed(block, recipe, name)) return [];
        const unit = unitText(amountOf(block, recipe, name).unit);
        return findingFor(
          block.sheet,
          amountPlace(block, recipe, name),
          AMOUNT_DECIMALS[unit],
          unit,
          true,
        );
      });
    }),
  );
  const answers = results
    .slice(0, MOST_RECIPES)
    .flatMap((result) =>
      findingFor(result.sheet, result, RESULT_DECIMALS[result.unit], result.unit),
    );
  return [...amounts, ...blocks.flatMap(sharesBeside), ...answers];
}

export const moreDigits: Rule = {
  ...identity,
  title: "A number has more digits than the data behind it",
  find: findAll,
};
