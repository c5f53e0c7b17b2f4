import { findItem } from "../../catalogue/findItem";
import type { Allergen } from "../../catalogue/ingredient";
import type { WorkbookSheet } from "../../workbook/model";
import { catalogueName } from "../catalogueName";
import type { AuditContext } from "../context";
import type { Finding } from "../finding";
import { findingAt } from "../findingAt";
import type { RecipeBlock } from "../recipes/recipeBlock";
import { withoutExtracts } from "../recipes/names/withoutExtracts";
import { textAt } from "../recipes/cells";
import { sheetTexts } from "../recipes/sheetTexts";
import type { Rule } from "../rule";
import { cautionsSaid, type SaidCaution } from "../cautions/cautionsSaid";
import { saysEggSafe } from "../cautions/saysEggSafe";
import { readsFrom } from "../cautions/readsFrom";
import { isSolutionOfClass } from "../solutions/isSolutionOfClass";
import { sheetsTelling } from "../cautions/sheetsTelling";
import { saysAllergens, saysBesideNames, saysSomewhere } from "../cautions/saidToEater";

const identity = { id: "caution-not-named", severity: "note" } as const;

/** The names of these ingredients hold the word itself. */
const NAMED_ALIKE = new Set(["alcohol", "glycerol and children"]);

interface Carried {
  readonly cautions: ReadonlySet<string>;
  readonly allergens: ReadonlySet<Allergen>;
  /** Whether something is described by its parts: which allergens that has, is told beside it. */
  readonly hasOwn: boolean;
}

/** Whether the words of a line say that its egg is not raw: "pasteurised", "cook to 82 °C". */
const isCooked = ({ sheet }: RecipeBlock, row: number): boolean =>
  (sheetTexts(sheet).columnsByRow.get(row) ?? []).some((column) =>
    saysEggSafe(textAt(sheet, row, column)),
  );

function carriedIn(block: RecipeBlock): Carried {
  const { names, ownIngredients, layout } = block;
  const cautions = new Set<string>();
  const allergens = new Set<Allergen>();
  let hasOwn = false;
  for (const { item, row } of names) {
    const name = catalogueName(item, ownIngredients);
    hasOwn ||= name === null;
    const match = findItem(name ?? "");
    if (match.kind === "solute" && match.solute.name === "glycerol")
      cautions.add("glycerol and children");
    if (match.kind !== "ingredient") continue;
    const isSafe = layout === "down" && isCooked(block, row);
    for (const caution of match.ingredient.cautions)
      if (caution !== "raw egg" || !isSafe) cautions.add(caution);
    if (match.ingredient.allergens === "unknown") continue;
    for (const allergen of match.ingredient.allergens) allergens.add(allergen);
  }
  return { cautions, allergens, hasOwn };
}

const known = new WeakMap<RecipeBlock, Carried>();

function carriedBy(block: RecipeBlock): Carried {
  const carried = known.get(block) ?? carriedIn(block);
  known.set(block, carried);
  return carried;
}

/** Whether what is told on a sheet of a caution may be told of this list: one of drinks by their strength has alcohol. */
const mayCarry = (block: RecipeBlock, key: string): boolean =>
  carriedBy(block).cautions.has(key) ||
  (key === "alcohol" && [...block.roles.values()].includes("abv"));

/** What of all that some recipes of a sheet carry is told nowhere. */
function unsaidOf(
  context: AuditContext,
  sheet: WorkbookSheet,
  here: readonly RecipeBlock[],
): string[] {
  const { workbook, blocks } = context;
  const telling = (carries: (block: RecipeBlock) => boolean) =>
    sheetsTelling(workbook, blocks, sheet, carries);
  const isTold = (caution: SaidCaution) => {
    const { key, said } = caution;
    const sheets = telling((block) => mayCarry(block, key));
    return NAMED_ALIKE.has(key)
      ? saysBesideNames(context, sheets, said)
      : saysSomewhere(sheets, caution);
  };
  const cautions = new Set(here.flatMap((block) => [...carriedBy(block).cautions]));
  const missing = cautionsSaid.filter((one) => cautions.has(one.key) && !isTold(one));
  const unsaid = missing.map(({ advice }) => advice);
  const allergens = new Set(here.flatMap((block) => [...carriedBy(block).allergens]));
  const saysThem = () =>
    saysAllergens(
      context,
      telling((block) => carriedBy(block).allergens.size > 0 || carriedBy(block).hasOwn),
      allergens,
    );
  if (allergens.size > 0 && !saysThem())
    unsaid.push(`its allergens are ${[...allergens].sort().join(", ")}`);
  return unsaid;
}

function findOn(context: AuditContext, sheet: WorkbookSheet): Finding[] {
  const here = withoutExtracts(context.blocks).filter(
    (block) => block.sheet === sheet && !isSolutionOfClass(block),
  );
  const unsaid = unsaidOf(context, sheet, here);
  if (unsaid.length === 0) return [];
  const first = here.find((block) => unsaidOf(context, sheet, [block]).length > 0);
  if (first === undefined) return [];
  return [
    findingAt(identity, sheet, first.range, {
      message: `Nothing here or on a sheet for all tells the eater: ${unsaid.join("; ")}.`,
      effect: null,
      fix: "Say it on the sheet or the label; local food rules decide the wording.",
    }),
  ];
}

export const cautionNotNamed: Rule = {
  ...identity,
  title: "The workbook does not tell the eater of an allergen or a caution",
  find: (context) => {
    const { workbook, blocks } = context;
    const found = workbook.sheets
      .map((sheet) => ({ sheet, findings: findOn(context, sheet) }))
      .filter(({ findings }) => findings.length > 0);
    // What a shopping list takes over is told where its recipes stand.
    const isTakenFrom = (home: WorkbookSheet, other: WorkbookSheet) =>
      other !== home &&
      blocks.every((block) => block.sheet !== home || readsFrom(workbook, block, other));
    return found
      .filter(({ sheet }) => !found.some((other) => isTakenFrom(sheet, other.sheet)))
      .flatMap(({ findings }) => findings);
  },
};
