import { overlaps } from "../../../workbook/references";
import { hasWater, isClassBlock } from "../classSheet";
import { amountPlace, isOneRow, type RecipeBlock, type RecipeName } from "../recipeBlock";
import { formKind } from "./formLabels";
import { keyOf } from "./rolesByFormula";

const OF_ONE = new Set<string>(["molar mass", "moles", "particles", "constant", "answer"]);

const overlap = (one: RecipeBlock, other: RecipeBlock): boolean => overlaps(one.range, other.range);

const saysMore = ({ names }: RecipeBlock): boolean =>
  names.some(({ details }) => details !== undefined && details.size > 0);

/** Labels of a worked example that a list took for names do not count. */
const namesIn = ({ names }: RecipeBlock): number =>
  names.filter(({ item }) => !OF_ONE.has(formKind(item) ?? "")).length;

/** The cell of what is weighed first. */
const weighedIn = (block: RecipeBlock): string => {
  const [[name], [recipe]] = [block.names, block.recipes];
  return name === undefined || recipe === undefined ? "" : keyOf(amountPlace(block, recipe, name));
};

/** A row that says what is dissolved in how much water says so, too, to a calculation that stands elsewhere. */
const isOfSameMass = (list: RecipeBlock, form: RecipeBlock): boolean =>
  isOneRow(list) && weighedIn(list) === weighedIn(form);

/** Whether a list says all that a worked example read from the same cells would. */
const isBetter = (list: RecipeBlock, form: RecipeBlock): boolean =>
  hasWater(list) &&
  (isClassBlock(list) ||
    !saysMore(form) ||
    (list.layout === "down" && namesIn(list) > form.names.length));

const withDetails = (name: RecipeName, { details }: RecipeName): RecipeName =>
  details === undefined
    ? name
    : { ...name, details: new Map([...details, ...(name.details ?? [])]) };

/** Whether the headings of a list leave open what a column is: "ΔTm", "T in °C", or one behind a gap. */
const isUntold = ({ roles }: RecipeBlock, column: number): boolean => {
  const role = roles.get(column) ?? "other";
  return role === "other" || role === "temperature";
};

/** A row of a table with the constants that its formulas read elsewhere, and with what they tell of its answers where the words above them do not. */
function withWorking(list: RecipeBlock, forms: readonly RecipeBlock[]): RecipeBlock {
  const working = isOneRow(list) ? forms.find((form) => isOfSameMass(list, form)) : undefined;
  const worked = (working?.answers ?? []).filter(
    ({ row, column, role }) =>
      role !== undefined && list.range.top === row && isUntold(list, column),
  );
  const [own, theirs] = [list.names[0], working?.names[0]];
  if (own === undefined || theirs === undefined) return list;
  const names = [withDetails(own, theirs), ...list.names.slice(1)];
  return worked.length === 0 ? { ...list, names } : { ...list, names, worked };
}

/** Lists and worked examples of one sheet; cells that both claim go to the one that makes more of them. */
export function withForms(
  lists: readonly RecipeBlock[],
  forms: readonly RecipeBlock[],
): RecipeBlock[] {
  const kept = forms.filter(
    (form) =>
      !lists.some(
        (list) => (overlap(list, form) && isBetter(list, form)) || isOfSameMass(list, form),
      ),
  );
  const others = lists.filter((list) => !kept.some((form) => overlap(list, form)));
  return [...others.map((list) => withWorking(list, forms)), ...kept];
}
