import { componentPerGram, endOfFreezingPerGram } from "../recipe/perGram";
import type { AdjustLine } from "./readQuestion";
import { negated, type LinearForm } from "./wishForm";

/** Between which temperatures freezing ends (Tm′) in the mixes that are looked at. */
export interface EndsBetween {
  readonly coldestC: number;
  readonly warmestC: number;
}

/** Of mixes without an end of freezing, and of those where it lies below every temperature asked about. */
export const NO_END: EndsBetween = { coldestC: -Infinity, warmestC: -Infinity };

/** Of what is dissolved so much may lack a Tm′; above it none is known (the functions' own limit). */
const MOST_WITHOUT_END = 0.2;

/** At least 0 when freezing ends no warmer than a temperature: Tm′ is a mean by mass, so this is linear. */
export function endsBelow(lines: readonly AdjustLine[], temperatureC: number): LinearForm {
  const perGram = lines.map(({ item }) => {
    const { grams, gramsTimesC } = endOfFreezingPerGram(item);
    return temperatureC * grams - gramsTimesC;
  });
  return { perGram, constant: 0 };
}

/** Rows that are at least 0 when freezing ends between two temperatures. */
export const endsWithin = (
  lines: readonly AdjustLine[],
  { coldestC, warmestC }: EndsBetween,
): readonly LinearForm[] => [endsBelow(lines, warmestC), negated(endsBelow(lines, coldestC))];

/** At least 0 when so much of what is dissolved lacks a Tm′ that the mix has none. */
export function endUnknown(lines: readonly AdjustLine[]): LinearForm {
  const perGram = lines.map(
    ({ item }) =>
      (1 - MOST_WITHOUT_END) * componentPerGram(item, "dissolved") -
      endOfFreezingPerGram(item).grams,
  );
  return { perGram, constant: 0 };
}

/** The coldest and the warmest Tm′ that any mix of the ingredients can have, °C; null when none has one. */
export function possibleEnds(lines: readonly AdjustLine[]): EndsBetween | null {
  const ends = lines.flatMap(({ item, grams, toGrams }) => {
    const part = endOfFreezingPerGram(item);
    return part.grams > 0 && (grams > 0 || toGrams > 0) ? [part.gramsTimesC / part.grams] : [];
  });
  return ends.length === 0 ? null : { coldestC: Math.min(...ends), warmestC: Math.max(...ends) };
}
