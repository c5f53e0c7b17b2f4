import { NONE_NAMED } from "../../bowl/noneNamed";
import type { NumberFormat } from "../../words/numberFormat";
import type { Words } from "../../words/words";
import { sugarsOf, type LabelDraft } from "./draft";
import { ethanolGrams } from "./ethanolGrams";
import { faultOf } from "./faultOf";
import { milkSalts } from "./milkSalts";
import { splitSugars } from "./splitSugars";

/** What the row of an own ingredient holds under each header, by the header's English word. */
export type OwnRow = readonly (readonly [header: string, content: string | number])[];

export interface LabelReading {
  /** What has to be mended first; null when nothing has. */
  readonly fault: string | null;
  /** How it adds up, and what was taken for granted. */
  readonly notes: readonly string[];
  /** g per 100 g under each header; alcohol in % by volume. */
  readonly row: OwnRow;
}

const MOST_OFF_GRAMS = 2; // as the functions allow it for a row of own ingredients

type Language = { readonly words: Words; readonly numbers: NumberFormat };

/** The parts per 100 g, what they add up to, and the sentences on what was assumed. */
function partsOf(draft: LabelDraft, { words, numbers }: Language) {
  const { taken } = words.larder.label;
  const density = draft.perUnit === "mL" ? (draft.gramsPerMl ?? 1) : 1;
  const factor = 100 / (draft.per * density);
  const of = (key: keyof LabelDraft["parts"]) => (draft.parts[key] ?? 0) * factor;
  const [sugars, polyols, fibre] = [sugarsOf(draft) * factor, of("polyols"), of("fibre")];
  const inside = sugars + polyols + (draft.isFibreInside ? fibre : 0);
  const starch = Math.max(of("carbohydrate") - inside, 0);
  const isMilk = draft.split === "milk" && sugars > 0;
  const { milkSaltsGrams, addedSaltGrams } = milkSalts(isMilk ? sugars : 0, of("salt"));
  const abv = draft.parts.abv ?? 0; // by volume whatever the label's figures are for
  const grams: (readonly [string, number])[] = [
    ["fat", of("fat")],
    ...(sugars > 0 ? splitSugars(draft, sugars, factor) : []),
    [draft.polyol, polyols],
    ["protein", of("protein")],
    ["sodium chloride", addedSaltGrams],
    ["milk salts", milkSaltsGrams],
    ["fruit acids", of("acids")],
    ["ash", of("ash")],
    ["inert", starch + fibre],
  ];
  const printed =
    grams.reduce((sum, [, part]) => sum + part, 0) + ethanolGrams(abv, draft.gramsPerMl);
  const assumed =
    draft.split === "milk"
      ? taken.milk(numbers.fixed(milkSaltsGrams, 2))
      : draft.split === "each"
        ? null
        : taken[draft.split];
  const notes = [
    ...(sugars > 0 && assumed !== null ? [assumed] : []),
    ...(starch > 0.5 ? [taken.starch(numbers.fixed(starch, 1))] : []),
    ...(fibre > 0 ? [taken.fibre] : []),
    taken.exact,
  ];
  const water = draft.parts.water == null ? null : of("water");
  return { grams, abv, printed, water, notes };
}

function sumSentences(printed: number, water: number | null, { words, numbers }: Language) {
  const texts = words.larder.label;
  const shown = (grams: number) => numbers.fixed(grams, 1);
  const off = printed + (water ?? 0) - 100;
  if (water === null && off > MOST_OFF_GRAMS) {
    return { fault: texts.tooMuch(shown(printed), shown(off)), notes: [] };
  }
  if (water !== null && Math.abs(off) > MOST_OFF_GRAMS) {
    return { fault: texts.offBy(shown(printed + water), shown(Math.abs(off))), notes: [] };
  }
  const sum = texts.sumOf(shown(printed + (water ?? 0)));
  return {
    fault: null,
    notes: water === null ? [sum, texts.rest(shown(Math.max(-off, 0)))] : [sum],
  };
}

/** Blank means unknown to the functions. */
const allergenCell = (allergens: LabelDraft["allergens"]): string =>
  allergens === null ? "" : allergens.length === 0 ? NONE_NAMED : allergens.join(", ");

const SHOWN_DIGITS = 5;

/** Reads a filled-in label into the row of an own ingredient, and says what it took for granted. */
export function readLabel(draft: LabelDraft, language: Language): LabelReading {
  const { name, source, cautions, allergens, gramsPerMl } = draft;
  const texts: OwnRow = [["name", name.trim()]];
  const fault = faultOf(draft, language);
  if (draft.isSame) {
    return {
      fault,
      notes: [],
      row: [...texts, ["same as", draft.sameAs.trim()], ["source", source]],
    };
  }
  const { grams, abv, printed, water, notes } = partsOf(draft, language);
  const sum = sumSentences(printed, water, language);
  const numbers = [
    ["water", water ?? Math.max(100 - printed, 0)] as const,
    ...grams.filter(([, part]) => part > 0),
    ...(abv > 0 ? [["abv", abv] as const] : []),
    ...(gramsPerMl === null ? [] : [["g per mL", gramsPerMl] as const]),
  ].map(([header, value]) => [header, Number(value.toPrecision(SHOWN_DIGITS))] as const);
  const said = [
    ["allergens", allergenCell(allergens)] as const,
    ["cautions", cautions.trim()] as const,
    ["source", source.trim()] as const,
  ].filter(([, text]) => text !== "");
  return {
    fault: fault ?? sum.fault,
    notes: [...sum.notes, ...notes],
    row: [...texts, ...numbers, ...said],
  };
}
