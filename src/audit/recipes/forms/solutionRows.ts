import type { FinderContext } from "../finderContext";
import type { RecipeBlock } from "../recipeBlock";
import { answerOf } from "./answerOf";
import type { LabelledPair, LabelledValues } from "./labelledPairs";
import { keyOf, type ClassRole } from "./rolesByFormula";
import { solutionsInRow, valueInRow, type SolutionInRow } from "./solutionsInRow";
import { solutionTables, type SolutionTable } from "./solutionTable";
import { substanceOf } from "./substanceOf";

const DETAILS = ["molar mass", "moles", "particles"] as const;
const OF_SUBSTANCE = ["molar mass", "particles", "mass"] as const;

const unitOf = (pair: LabelledPair | undefined) =>
  pair === undefined || pair.unit === null ? {} : { unit: pair.unit };

function blockOf(table: SolutionTable, solution: SolutionInRow): RecipeBlock | null {
  const { context, columns, pairAt } = table;
  const { sheet, ownIngredients } = context;
  const { row, answers, sources, form } = solution;
  const at = (role: ClassRole) => {
    const place = sources.get(role);
    return place === undefined ? [] : [{ place, pair: pairAt.get(keyOf(place)) }];
  };
  const [[mass], [water]] = [at("mass"), at("water")];
  const details = DETAILS.flatMap((role) =>
    at(role).map(({ place, pair }) => [role, { ...place, label: pair?.label ?? "" }] as const),
  );
  if (mass === undefined || water === undefined || details.length === 0) return null;
  const data = OF_SUBSTANCE.flatMap(at);
  const substance = substanceOf(context, { row, data, heads: columns, form, answers });
  if (substance === null) return null;
  const [left, right] = [columns[0]?.column ?? 0, columns.at(-1)?.column ?? 0];
  const label = water.pair ?? { row, column: left };
  const solute = { ...substance, amountAt: mass.place, details: new Map(details) };
  const poured = { row: label.row, column: label.column, item: "water", amountAt: water.place };
  return {
    ...{ sheet, ownIngredients, layout: "down", headerRow: null, totals: [], unitColumn: null },
    range: { top: row, bottom: row, left, right },
    names: [
      { ...solute, ...unitOf(mass.pair) },
      { ...poured, ...unitOf(water.pair) },
    ],
    recipes: [{ title: substance.item, line: mass.place.column, unit: "g", unitAssumed: false }],
    roles: new Map(),
    answers: answers.flatMap((pair) => {
      const place = valueInRow(pair, row);
      return place === undefined ? [] : [answerOf(pair, place)];
    }),
  };
}

/**
 * Tables of a class in which every row is a solution, while what is dissolved, its constants or the water stand
 * elsewhere: what the formulas of the row read tells.
 */
export const solutionRows = (context: FinderContext, labelled: LabelledValues): RecipeBlock[] =>
  solutionTables(context, labelled).flatMap((table) => {
    const rows = new Set(table.columns.flatMap(({ values }) => values.map(({ row }) => row)));
    return [...rows].flatMap((row) =>
      solutionsInRow(table, row).flatMap((solution) => blockOf(table, solution) ?? []),
    );
  });
