import type { Result } from "../foundation/result";
import { componentGrams } from "../recipe/components";
import { freezingPointOfMix, iceFractionOfMix } from "../recipe/freezing";
import type { Mix } from "../recipe/mix";
import { componentPerGram, heldGramsPerGram, sweetnessPerGram } from "../recipe/perGram";
import { sweetnessOfMix } from "../recipe/sweetness";
import type { AdjustWish } from "./adjustment";
import type { AdjustLine } from "./readQuestion";

/** Σ perGram·grams + constant, along the ingredients. */
export interface LinearForm {
  readonly perGram: readonly number[];
  readonly constant: number;
}

export const formValue = ({ perGram, constant }: LinearForm, grams: readonly number[]): number =>
  perGram.reduce((sum, each, at) => sum + each * (grams[at] ?? 0), constant);

export const negated = ({ perGram, constant }: LinearForm): LinearForm => ({
  perGram: perGram.map((each) => -each),
  constant: -constant,
});

/**
 * A form that is at least 0 exactly when the wish's quantity is at least `level`. At a fixed temperature
 * everything is linear in the grams: water, what is held of it, sweetness, mass, cost.
 * @param lowestC where freezing ends (Tm′): below it the ice keeps its share
 */
export function atLeast(
  lines: readonly AdjustLine[],
  wish: AdjustWish,
  level: number,
  lowestC: number,
): LinearForm {
  const each = (perGram: (line: AdjustLine) => number, constant = 0): LinearForm => ({
    perGram: lines.map(perGram),
    constant,
  });
  const water = ({ item }: AdjustLine) => componentPerGram(item, "water");
  const total = ({ item }: AdjustLine) => componentPerGram(item, "total");
  switch (wish.kind) {
    case "ice fraction": {
      const atC = Math.max(wish.temperatureC, lowestC);
      const basis = wish.basis === "water" ? water : total;
      return each((line) => water(line) - heldGramsPerGram(line.item, atC) - level * basis(line));
    }
    case "freezing point":
      // At 0 °C only a mix without solutes freezes; a hair below, what is held grows without limit.
      return each((line) => water(line) - heldGramsPerGram(line.item, Math.min(level, -1e-9)));
    case "sweetness":
      return each((line) => 100 * sweetnessPerGram(line.item) - level * total(line));
    case "component":
      return each(
        (line) => 100 * componentPerGram(line.item, wish.component) - level * total(line),
      );
    case "total":
      return each(total, -level);
    case "cost":
      return each((line) => (line.pricePerKg ?? 0) - level * total(line));
  }
}

/** The quantity of a wish as the functions answer it. */
export function wishValue(
  lines: readonly AdjustLine[],
  wish: AdjustWish,
  mix: Mix,
  grams: readonly number[],
): Result<number> {
  switch (wish.kind) {
    case "ice fraction":
      return iceFractionOfMix(mix, wish.temperatureC, wish.basis);
    case "freezing point":
      return freezingPointOfMix(mix);
    case "sweetness":
      return sweetnessOfMix(mix);
    case "component":
      return (100 * componentGrams(mix, wish.component)) / mix.totalGrams;
    case "total":
      return mix.totalGrams;
    case "cost":
      return (
        lines.reduce((sum, { pricePerKg }, at) => sum + (pricePerKg ?? 0) * (grams[at] ?? 0), 0) /
        mix.totalGrams
      );
  }
}
