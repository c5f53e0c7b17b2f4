import { callFunction } from "../../../src/worksheet/callFunction";
import { isProblem } from "../../../src/foundation/problem";
import type { NumberFormat } from "../../words/numberFormat";
import type { Words } from "../../words/words";
import { SUGARS, sugarsOf, type LabelDraft } from "./draft";
import { sugarShares } from "./splitSugars";

const SLACK_GRAMS = 0.5; // what rounding on a label can make

function figureFault(draft: LabelDraft, words: Words, numbers: NumberFormat): string | null {
  const { faults } = words.larder.label;
  const { parts, split, each, polyol } = draft;
  const sugars = sugarsOf(draft);
  const [polyols, fibre] = [parts.polyols ?? 0, parts.fibre ?? 0];
  const carbohydrate = parts.carbohydrate ?? sugars + polyols;
  const inside = sugars + polyols + (draft.isFibreInside && parts.carbohydrate ? fibre : 0);
  if (sugars === 0 && Object.values(parts).every((grams) => !grams)) return faults.nothing;
  if (draft.perUnit === "mL" && draft.gramsPerMl === null) return faults.density;
  if (inside > carbohydrate + SLACK_GRAMS) return faults.sugars;
  if (polyols > 0 && polyol === "") return faults.polyol;
  if (sugars === 0) return null;
  const sum = SUGARS.reduce((total, name) => total + (each[name] ?? 0), 0);
  if (split === "each" && Math.abs(sum - sugars) > SLACK_GRAMS) {
    return faults.each(numbers.plain(sum), numbers.plain(sugars));
  }
  return split === "like" && sugarShares(draft.splitLike).length === 0
    ? faults.like(draft.splitLike)
    : null;
}

function sameFault({ sameAs }: LabelDraft, words: Words): string | null {
  if (sameAs.trim() === "") return words.larder.label.faults.same;
  const found = callFunction("COMPONENT", sameAs, 1, "total")[0]?.[0] ?? null;
  return isProblem(found) ? words.said(found.message.replace(/^items: /, "")) : null;
}

/** What of the form has to be mended before it can be read; null when nothing has. */
export function faultOf(
  draft: LabelDraft,
  { words, numbers }: { readonly words: Words; readonly numbers: NumberFormat },
): string | null {
  const { faults } = words.larder.label;
  const fault = draft.isSame ? sameFault(draft, words) : figureFault(draft, words, numbers);
  if (fault !== null) return fault;
  const name = draft.name.trim();
  if (name === "") return faults.name;
  return /^[=+\-−@]/.test(name) ? faults.formula : null;
}
