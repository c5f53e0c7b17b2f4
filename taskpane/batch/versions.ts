import { askMix, firstNumber, rowsOf, type RecipeMix } from "../bowl/askMix";

export interface VersionFigures {
  readonly totalGrams: number | null;
  readonly firstIceC: number | null;
  readonly iceServed: number | null;
  readonly sweetness: number | null;
  readonly solidsFraction: number | null;
}

/** The figures by which two versions of a recipe are told apart; null where a function declines. */
export function versionFigures(mix: RecipeMix, servingC: number): VersionFigures {
  const totalGrams = firstNumber(askMix(mix, "COMPONENT", "total"));
  const solids = firstNumber(askMix(mix, "COMPONENT", "solids"));
  return {
    totalGrams,
    firstIceC: firstNumber(askMix(mix, "FREEZINGPOINT")),
    iceServed: firstNumber(askMix(mix, "ICEFRACTION", servingC, "water")),
    sweetness: firstNumber(askMix(mix, "SWEETNESS")),
    solidsFraction:
      totalGrams === null || solids === null || totalGrams <= 0 ? null : solids / totalGrams,
  };
}

export interface VersionRow {
  readonly name: string;
  readonly one: number | null;
  readonly other: number | null;
}

/** Every ingredient of either version with its grams in each; null where it is not in it. */
export function versionRows(one: RecipeMix, other: RecipeMix): readonly VersionRow[] {
  const [left, right] = [one, other].map(
    (mix) => new Map(rowsOf(mix).map(({ name, grams }) => [name, grams])),
  );
  const names = [...new Set([...(left?.keys() ?? []), ...(right?.keys() ?? [])])];
  return names.map((name) => ({
    name,
    one: left?.get(name) ?? null,
    other: right?.get(name) ?? null,
  }));
}
