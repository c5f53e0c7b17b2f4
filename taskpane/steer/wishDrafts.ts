import type { AdjustWish } from "../../src/adjust/adjustment";
import type { Aim } from "../aims/aim";
import type { PaneContext } from "../view";

/** What can be wished besides the serving target, in the order of the list. */
export const WISH_KEYS = [
  ...(["ice", "point", "sweetness", "solids", "fat", "sugars", "total", "cost"] as const),
];
export type WishKey = (typeof WISH_KEYS)[number];

/** A wish as it stands in the form: numbers as typed. */
export interface WishDraft {
  readonly key: WishKey;
  readonly from: string;
  readonly to: string;
  /** Only of a share of ice. */
  readonly temperature: string;
}

/** A wish with the name it has in a sentence. */
export interface NamedWish {
  readonly wish: AdjustWish;
  readonly key: WishKey;
  readonly name: string;
}

export interface WishForm {
  readonly target: Aim | null;
  /** The mass that is to stay, g, and how nearly; null when it may change. */
  readonly keptTotal: { readonly grams: number; readonly within: number } | null;
  readonly drafts: readonly WishDraft[];
}

const PERCENT = 100;
/** So far inside a target's window the answer is to lie, so that no rounding carries it out again. */
const INSIDE = 1e-4;

function bodyOf(key: WishKey, temperatureC: number) {
  switch (key) {
    case "ice":
      return { kind: "ice fraction", temperatureC, basis: "water" } as const;
    case "point":
      return { kind: "freezing point" } as const;
    case "sweetness":
    case "total":
    case "cost":
      return { kind: key } as const;
    case "solids":
    case "fat":
    case "sugars":
      return { kind: "component", component: key } as const;
  }
}

/** A wish of the form with its numbers read, or the sentence that says what is wrong with them. */
function readDraft(draft: WishDraft, { words, numbers }: PaneContext): NamedWish | string {
  const texts = words.steer;
  const name = texts.names[draft.key];
  const ends = [draft.from, draft.to].map((typed) =>
    typed.trim() === "" ? null : (numbers.read(typed) ?? NaN),
  );
  const wrong = ends.findIndex((end) => end !== null && Number.isNaN(end));
  if (wrong >= 0) return texts.notANumber(name, wrong === 0 ? draft.from : draft.to);
  const temperatureC = draft.key === "ice" ? numbers.read(draft.temperature) : 0;
  if (temperatureC === null) return texts.notANumber(name, draft.temperature);
  const [from = null, to = null] = ends.map((end) =>
    end !== null && draft.key === "ice" ? end / PERCENT : end,
  );
  if (from === null && to === null) return texts.noEnd(name);
  return {
    key: draft.key,
    name: draft.key === "ice" ? texts.iceAt(numbers.plain(temperatureC)) : name,
    wish: { ...bodyOf(draft.key, temperatureC), from, to },
  };
}

/** The wishes of a form, the serving target first; a sentence when one cannot be read or none is there. */
export function readWishes(form: WishForm, context: PaneContext): readonly NamedWish[] | string {
  const { words } = context;
  const texts = words.steer;
  const found: NamedWish[] = [];
  const { target, keptTotal } = form;
  if (target !== null) {
    const { temperatureC, basis, iceFrom, iceTo, label } = target;
    const window = { from: iceFrom + INSIDE, to: iceTo - INSIDE };
    const wish = { kind: "ice fraction", temperatureC, basis, ...window } as const;
    found.push({ key: "ice", name: texts.targetNamed(label), wish });
  }
  for (const draft of form.drafts) {
    const read = readDraft(draft, context);
    if (typeof read === "string") return read;
    found.push(read);
  }
  if (found.length === 0) return texts.noWish;
  if (keptTotal !== null) {
    const { grams, within } = keptTotal;
    const wish = { kind: "total", from: grams - within, to: grams + within } as const;
    found.push({ key: "total", name: texts.keptTotal, wish });
  }
  return found;
}

const DECIMALS: Readonly<Record<WishKey, number>> = {
  ...{ ice: 1, point: 2, sweetness: 1, solids: 1, fat: 1, sugars: 1, total: 1, cost: 2 },
};

/** A value of a wish's quantity with its unit, to the digits that tell it from another one. */
export function wishText(
  { key }: NamedWish,
  value: number,
  { words, numbers }: PaneContext,
  other = NaN,
): string {
  const scale = key === "ice" ? PERCENT : 1;
  const usual = (one: number) => numbers.fixed(one * scale, DECIMALS[key]);
  const shown = usual(value) === usual(other) ? numbers.plain(value * scale) : usual(value);
  return words.steer.withUnit[key](shown);
}
