import { solutes } from "../../../src/catalogue/solutes";
import { callFunction } from "../../../src/worksheet/callFunction";
import type { LabelDraft } from "./draft";

type Grams = readonly (readonly [header: string, grams: number])[];

const isSugar = (name: unknown): name is string =>
  solutes.some((solute) => solute.name === name && solute.kind === "sugar");

/** The sugars of an entry of the larder as shares of their sum; none where it has no sugars or is not known. */
export function sugarShares(name: string): Grams {
  const [, ...rows] = callFunction("COMPOSITION", name, 100);
  const found = rows.flatMap(([part, grams]) =>
    isSugar(part) && typeof grams === "number" ? [[part, grams] as const] : [],
  );
  const sum = found.reduce((total, [, grams]) => total + grams, 0);
  return found.map(([part, grams]) => [part, grams / sum] as const);
}

/** So many grams of sugars, by the kind that the draft says. Unsaid, they stay "sugars": taken as sucrose. */
export function splitSugars(draft: LabelDraft, grams: number, factor: number): Grams {
  switch (draft.split) {
    case "unsaid":
      return [["sugars", grams]];
    case "milk":
      return [["lactose", grams]];
    case "invert": // inversion makes as many molecules of one as of the other, and they weigh the same
      return [
        ["glucose", grams / 2],
        ["fructose", grams / 2],
      ];
    case "like":
      return sugarShares(draft.splitLike).map(([name, share]) => [name, share * grams] as const);
    case "each":
      return Object.entries(draft.each).map(
        ([name, each]) => [name, (each ?? 0) * factor] as const,
      );
  }
}
