import { put, shown, type Content, type CorpusSheet, type Spot } from "../book";
import { cautionsIn, tellIn, type Voice } from "../caterers/words";
import { nameTarget, tell, type Kit } from "../kit";
import { say, type Place, type Problem, type Said } from "../layouts/parts";
import { List, type ListPlan } from "../list";
import type { MarkedRecipe } from "../marks";
import type { MadeRecipe } from "../recipes";
import { usualPrice } from "../unseen/shared";
import { dissolved, gramsOf, idealGap, tolerated, type Dissolved } from "../solution";

const substance = (
  en: string,
  de: string,
  molarMass: number,
  particles: number,
  gramsPerKg: readonly [number, number],
): Dissolved => ({ ...{ en, de, molarMass }, particles, gramsPerKg });

/** A substance that mistakes are seeded into, too. */
const known = (en: string): Dissolved => dissolved.find((each) => each.en === en)!;

export const SUGARS: readonly Dissolved[] = [
  known("sucrose"),
  known("fructose"),
  known("glucose monohydrate"),
  substance("anhydrous lactose", "Lactose, wasserfrei", 342.3, 1, [60, 120]),
  substance("anhydrous maltose", "Maltose, wasserfrei", 342.3, 1, [60, 120]),
];

export const SUGAR_ALCOHOLS: readonly Dissolved[] = [
  substance("sorbitol", "Sorbit", 182.17, 1, [30, 70]),
  substance("xylitol", "Xylit", 152.15, 1, [30, 60]),
  substance("erythritol", "Erythrit", 122.12, 1, [20, 50]),
];

export const SALTS: readonly Dissolved[] = [
  known("sodium chloride"),
  known("potassium chloride"),
  known("sodium bicarbonate"),
  substance("anhydrous calcium chloride", "Calciumchlorid, wasserfrei", 110.98, 3, [6, 14]),
];

export const ALCOHOLS: readonly Dissolved[] = [
  substance("ethanol", "Ethanol", 46.07, 1, [12, 40]),
  substance("glycerol", "Glycerin", 92.09, 1, [20, 60]),
  substance("ethylene glycol", "Ethylenglykol", 62.07, 1, [15, 45]),
  substance("propan-2-ol", "Propan-2-ol", 60.1, 1, [12, 40]),
];

export interface Lesson {
  readonly list: readonly Problem[];
  /** How near the ideal law comes to all of them, as the language writes it. */
  readonly tolerance: string;
}

/** So many grams of each in some water, weak enough for the ideal law. */
export function lesson(
  { random, language }: Kit,
  solutes: readonly Dissolved[],
  waters: readonly number[],
): Lesson {
  const list = solutes.map((solute) => {
    const waterGrams = random.pick(waters);
    return { solute, waterGrams, grams: gramsOf(random, solute, waterGrams) };
  });
  const gaps = list.map((each) => idealGap([each.solute], [each.grams], each.waterGrams));
  const text = tolerated(Math.max(...gaps));
  return { list, tolerance: language === "de" ? text.replace(".", ",") : text };
}

export interface IcePlan extends Omit<ListPlan, "top" | "left"> {
  readonly said: readonly Said[];
  /** In whose words the eater is told; as usual where it is only said in what form. */
  readonly voice: Voice | "pair" | "sentence";
  readonly target?: string;
  /** What is said stands so many columns to the right instead of below. */
  readonly right?: number;
}

/** Tells the eater in somebody's words, only the cautions where the list names the allergens; gives the next free row. */
function tellOf(
  kit: Kit,
  sheet: CorpusSheet,
  recipe: MarkedRecipe,
  place: Place,
  voice: IcePlan["voice"],
): number {
  if (typeof voice === "string") return tell(kit, sheet, recipe, { ...place, as: voice });
  if (voice.lead !== "") return tellIn(sheet, recipe, place, voice);
  const cautions = cautionsIn(recipe.made, voice);
  if (cautions === "") return place.row;
  recipe.flags.push(put(sheet, place.row, place.column, cautions));
  return place.row + 1;
}

/** A recipe's lines, and below or beside them what is said of it. */
export function iceOn(
  kit: Kit,
  sheet: CorpusSheet,
  made: MadeRecipe,
  { row, column, ...plan }: IcePlan & Place,
): { readonly recipe: MarkedRecipe; readonly list: List; readonly end: number } {
  const { said, voice, target, right, ...rest } = plan;
  const list = new List(kit, sheet, made, { ...rest, top: row, left: column });
  const at =
    right === undefined
      ? { row: list.totalRow + 2, column }
      : { row: row + 1, column: column + right };
  let next = say(sheet, list.recipe, at, said);
  if (target !== undefined && made.target !== null) {
    nameTarget(sheet, list.recipe, { row: next++, column: at.column, label: target });
  }
  next = tellOf(kit, sheet, list.recipe, { row: next + 1, column: at.column }, voice);
  return { recipe: list.recipe, list, end: Math.max(next, list.totalRow + 1) };
}

/** Temperatures down a column, in half degrees, under a heading; each colder than the last where it cools. */
export function readings(
  kit: Kit,
  sheet: CorpusSheet,
  heading: Spot,
  plan: {
    readonly count: number;
    readonly from: number;
    readonly to: number;
    readonly cools?: true;
  },
): void {
  const { count, from, to, cools } = plan;
  const read = Array.from(
    { length: count },
    () => kit.random.whole(Math.round(2 * from), Math.round(2 * to)) / 2,
  );
  if (cools) read.sort((one, other) => other - one);
  const contents = read.map((each) => shown(each, "0.0"));
  const spots = below(sheet, { row: heading.row + 1, column: heading.column }, contents);
  kit.marked.numberColumns.push({ spots, heading, total: null, kind: "temperature" });
}

/** Texts or numbers one below the other. */
export const below = (
  sheet: CorpusSheet,
  { row, column }: Place,
  contents: readonly Content[],
): Spot[] => contents.map((content, index) => put(sheet, row + index, column, content));

/** What a kilogram of a line costs, with cents. */
export const kiloPrice = ({ random }: Kit, { lines }: MadeRecipe, index: number): Content =>
  shown(usualPrice(random, lines[index]!.en), "0.00");
