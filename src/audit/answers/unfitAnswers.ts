import { cellName } from "../../workbook/address";
import type { AuditContext } from "../context";
import { rounded } from "../effect";
import type { Finding } from "../finding";
import { isLedger } from "../recipes/isLedger";
import type { Place, Recipe } from "../recipes/recipeBlock";
import { statedParts } from "./statedParts";

/** Fewer answers may each be wrong by themselves. */
const LEAST_ANSWERS = 3;

const cellOf = (sheet: string, { row, column }: Place): string =>
  `${sheet}!${cellName(row, column)}`;

/** The cells of the answers of each recipe, by the recipe. */
function answersByRecipe(context: AuditContext): ReadonlyMap<Recipe, ReadonlySet<string>> {
  const cells = new Map<Recipe, Set<string>>();
  const answers = [...context.results, ...statedParts(context)];
  for (const { block, recipe, sheet, row, column } of answers) {
    if (isLedger(block)) continue;
    const own = cells.get(recipe) ?? new Set();
    cells.set(recipe, own.add(cellOf(sheet.name, { row, column })));
  }
  return cells;
}

/** What a label has in quotes explains nothing. */
const isUnexplained = ({ message }: Finding): boolean =>
  !/ comes out | ideal law /.test(message.replaceAll(/"[^"]*"/g, ""));

function asOne([first, ...others]: readonly Finding[]): Finding[] {
  if (first === undefined) return [];
  const { rule, sheet, cell, message, effect } = first;
  return [
    {
      ...{ rule, sheet, cell, effect, severity: "warning" as const },
      message: `None of the ${rounded(others.length + 1, 0)} answers here fits the list: ${message}`,
      fix: "Look at what was read as the recipe, then at its amounts.",
    },
  ];
}

/**
 * Wrong answers where a recipe has several and all are wrong, told as one: then an amount is wrong, or the list was
 * read wrongly, and not each answer by itself.
 */
export function unfitAnswersAsOne(
  context: AuditContext,
  findings: readonly Finding[],
): readonly Finding[] {
  if (findings.length < LEAST_ANSWERS) return findings;
  const byCell = new Map(
    findings.filter(isUnexplained).map((finding) => [`${finding.sheet}!${finding.cell}`, finding]),
  );
  const unfit = [...answersByRecipe(context).values()].flatMap((cells) => {
    const wrong = [...cells].flatMap((cell) => byCell.get(cell) ?? []);
    return cells.size >= LEAST_ANSWERS && wrong.length === cells.size ? [wrong] : [];
  });
  const gone = new Set(unfit.flat());
  return [...findings.filter((finding) => !gone.has(finding)), ...unfit.flatMap(asOne)];
}
