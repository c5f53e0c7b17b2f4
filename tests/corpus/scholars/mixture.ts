import type { CorpusSheet, Spot } from "../book";
import type { Kit } from "../kit";
import { sumOf, type Problem } from "../layouts/parts";
import { choose, dissolved, gramsOf, idealGap, tolerated } from "../solution";
import type { Grid } from "./grid";

export interface Mix {
  readonly list: readonly Problem[];
  readonly waterGrams: number;
  readonly tolerance: string;
}

/** Some solutes for one water, weak enough together. */
export function mixFor({ random, language }: Kit, count: number): Mix {
  const waterGrams = random.pick([500, 600, 1000, 1200]);
  const solutes = choose(random, count, dissolved);
  const list = solutes.map((solute) => {
    const grams = Math.max(1, Math.round(gramsOf(random, solute, waterGrams) / 2));
    return { solute, waterGrams, grams };
  });
  const gap = idealGap(
    solutes,
    list.map(({ grams }) => grams),
    waterGrams,
  );
  const text = tolerated(gap);
  return { list, waterGrams, tolerance: language === "de" ? text.replace(".", ",") : text };
}

type Answers = Readonly<Record<"water" | "constant" | "depression", Spot>> & {
  readonly freezingPoint: Spot | null;
  readonly proviso: Spot;
};

export function markMix({ marked }: Kit, made: Grid, answers: Answers): void {
  marked.solutions.push({
    ...{ names: made.spots("name"), grams: made.spots("mass") },
    ...{ molarMasses: made.spots("molar"), particles: made.spots("particles") },
    moles: made.spots("moles"),
    ...(made.has("counted") && { counted: made.spots("counted") }),
    ...answers,
  });
}

/** The sum of some column, under it. */
export const under = (
  kit: Kit,
  sheet: CorpusSheet,
  spots: readonly Spot[],
  format?: string,
): Spot =>
  sumOf(kit, sheet, { row: spots.at(-1)!.row + 1, column: spots[0]!.column }, spots, format);
