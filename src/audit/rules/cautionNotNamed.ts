import { findItem } from "../../catalogue/findItem";
import type { WorkbookSheet } from "../../workbook/model";
import { catalogueName } from "../catalogueName";
import type { AuditContext } from "../context";
import type { Finding } from "../finding";
import { findingAt } from "../findingAt";
import type { RecipeBlock } from "../recipes/recipeBlock";
import { withoutExtracts } from "../recipes/names/withoutExtracts";
import type { Rule } from "../rule";
import { sheetsTelling } from "../cautions/sheetsTelling";
import { saysAllergens, saysBesideNames, saysSomewhere } from "../cautions/saidToEater";

const identity = { id: "caution-not-named", severity: "note" } as const;

/** What should be said where it is in a recipe, and the words by which a sheet says it. */
const CAUTIONS: readonly (readonly [key: string, said: RegExp, advice: string])[] = [
  [
    "honey and infants",
    /infant|bab(y|ies)|toddler|under (1|one)\b|(12|twelve) months|first year|1 year|säugling|kleinkind|unter (1|einem) jahr|(12|zwölf) monate|ersten lebensjahr/i,
    "honey is not for children under twelve months",
  ],
  // "Add the alcohol when it is cold" tells the cook and "Bottles, alcohol by weight" heads a table: not the eater.
  [
    "alcohol",
    /(contain|has|have|with|enthält|enthalten|mit) (some |etwas )?al[ck]ohol|adults|grown-?ups|erwachsene|18 (years|jahren)|ab 18|over 18|^(?!.*\b(add(ed|ing)?|stir(red)?|pour(ed)?|boil(ed)?|evaporates?|when cold|last|zu(ge)?geben|dazu(ge)?geben|zugie(ß|ss)en|(ein|unter)(ge)?rühr(en|t)|kochen|verkocht|verdampf\w*|zuletzt|zum schluss|al[ck]ohol (by|nach) (weight|volume|mass|gewicht|masse|volumen))\b).*al[ck]ohol/i,
    "it contains alcohol",
  ],
  [
    "raw egg",
    /raw (egg|yolk)|uncooked egg|pasteuri[sz]ed|rohe[smn]? (ei|eigelb|eier)|pasteurisiert/i,
    "it contains raw egg unless pasteurised",
  ],
  [
    "raw flour",
    /raw flour|(heat[- ]treated|baked|toasted) flour|rohes mehl|(erhitztes|geröstetes) mehl/i,
    "it contains raw flour unless heated",
  ],
  ["glycerol and children", /glycerol|glycerin/i, "glycerol is not for small children"],
];
/** The names of these ingredients hold the word itself. */
const NAMED_ALIKE = new Set(["alcohol", "glycerol and children"]);

interface Carried {
  readonly cautions: ReadonlySet<string>;
  readonly allergens: ReadonlySet<string>;
}

function carriedIn({ names, ownIngredients }: RecipeBlock): Carried {
  const cautions = new Set<string>();
  const allergens = new Set<string>();
  for (const { item } of names) {
    const match = findItem(catalogueName(item, ownIngredients) ?? "");
    if (match.kind === "solute" && match.solute.name === "glycerol")
      cautions.add("glycerol and children");
    if (match.kind !== "ingredient") continue;
    for (const caution of match.ingredient.cautions) cautions.add(caution);
    if (match.ingredient.allergens === "unknown") continue;
    for (const allergen of match.ingredient.allergens) allergens.add(allergen);
  }
  return { cautions, allergens };
}

const known = new WeakMap<RecipeBlock, Carried>();

function carriedBy(block: RecipeBlock): Carried {
  const carried = known.get(block) ?? carriedIn(block);
  known.set(block, carried);
  return carried;
}

/** What of all that some recipes of a sheet carry is told nowhere. */
function unsaidOf(
  context: AuditContext,
  sheet: WorkbookSheet,
  here: readonly RecipeBlock[],
): string[] {
  const { workbook, blocks } = context;
  const telling = (carries: (block: RecipeBlock) => boolean) =>
    sheetsTelling(workbook, blocks, sheet, carries);
  const says = (key: string, said: RegExp) => {
    const sheets = telling((block) => carriedBy(block).cautions.has(key));
    return NAMED_ALIKE.has(key)
      ? saysBesideNames(context, sheets, said)
      : saysSomewhere(sheets, said);
  };
  const cautions = new Set(here.flatMap((block) => [...carriedBy(block).cautions]));
  const missing = CAUTIONS.filter(([key, said]) => cautions.has(key) && !says(key, said));
  const unsaid = missing.map(([, , advice]) => advice);
  const allergens = new Set(here.flatMap((block) => [...carriedBy(block).allergens]));
  const saysThem = () =>
    saysAllergens(
      context,
      telling((block) => carriedBy(block).allergens.size > 0),
    );
  if (allergens.size > 0 && !saysThem())
    unsaid.push(`its allergens are ${[...allergens].sort().join(", ")}`);
  return unsaid;
}

function findOn(context: AuditContext, sheet: WorkbookSheet): Finding[] {
  const here = withoutExtracts(context.blocks).filter((block) => block.sheet === sheet);
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
  find: (context) => context.workbook.sheets.flatMap((sheet) => findOn(context, sheet)),
};
