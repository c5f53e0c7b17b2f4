import type { AdjustQuestion, AdjustWish } from "../../src/adjust/adjustment";
import { column, numberOf } from "../worksheet/ask";

/** Numbers from 0 to 1, the same ones for the same seed (a 32-bit generator by Marsaglia's xorshift). */
export function randomFrom(seed: number): () => number {
  let state = seed | 0 || 1;
  return () => {
    state ^= state << 13;
    state ^= state >>> 17;
    state ^= state << 5;
    return (state >>> 0) / 2 ** 32;
  };
}

export const PANTRY = [
  ...["water", "refined sugar", "dextrose powder (monohydrate)", "glucose syrup DE 42"],
  ...["whole milk", "cream 35 % fat", "skim milk powder", "honey, average", "apricot", "mango"],
  ...["lemon juice", "egg yolk", "trehalose", "fructose", "allulose", "erythritol", "sorbitol"],
  ...["spirit 40 % vol", "fine salt", "cocoa powder", "pistachios", "lactose", "glycerol"],
] as const;

const STRONG = new Set(["fine salt", "spirit 40 % vol", "glycerol"]);

/** What a wish asks for, by calling the worksheet function that a cell would call. */
export function askedValue(wish: AdjustWish, question: AdjustQuestion, grams: readonly number[]) {
  const mix = [column(question.items), column(grams)] as const;
  const total = () => numberOf("COMPONENT", ...mix, "total");
  switch (wish.kind) {
    case "ice fraction":
      return numberOf("ICEFRACTION", ...mix, wish.temperatureC, wish.basis);
    case "freezing point":
      return numberOf("FREEZINGPOINT", ...mix);
    case "sweetness":
      return numberOf("SWEETNESS", ...mix);
    case "component":
      return (100 * numberOf("COMPONENT", ...mix, wish.component)) / total();
    case "total":
      return total();
    case "cost":
      return (
        question.items.reduce(
          (sum, _, at) => sum + (question.pricesPerKg?.[at] ?? 0) * grams[at]!,
          0,
        ) / total()
      );
  }
}

export interface FeasibleCase {
  readonly question: AdjustQuestion;
  /** Amounts that meet every wish, by the way the case was built. */
  readonly knownGrams: readonly number[];
}

type Draft = Omit<AdjustQuestion, "wishes">;

function draft(random: () => number, stepGrams: number | null) {
  const pick = [...PANTRY].sort(() => random() - 0.5).slice(0, 3 + Math.floor(random() * 8));
  const items = [...new Set(["water", ...pick])];
  const grams = items.map((name) => {
    const amount = (STRONG.has(name) ? 20 : name === "water" ? 700 : 180) * (0.2 + random());
    return Math.round(amount * 10) / 10;
  });
  const free = items.map((_, at) => at < 2 || random() < 0.6);
  const knownGrams = grams.map((amount, at) =>
    free[at] ? amount * (0.6 + 0.8 * random()) : amount,
  );
  const mayChange = grams.map((amount, at) =>
    free[at]
      ? {
          fromGrams: Math.floor(amount * 0.5),
          toGrams: random() < 0.3 ? null : Math.ceil(amount * 1.6),
        }
      : null,
  );
  const pricesPerKg = items.map(() => 0.5 + 8 * random());
  const question: Draft = { items, grams, own: null, mayChange, pricesPerKg, stepGrams };
  return { question, knownGrams };
}

const COMPONENTS = ["solids", "fat", "sugars", "water", "protein"] as const;

/** Serving temperatures, and such at which some mixes have ceased to freeze (Tm′ of sugars: −30 to −46 °C). */
export const SERVED = { warmestC: -3, coldestC: -22 };
export const BELOW_THE_END = { warmestC: -28, coldestC: -55 };

function wishKinds(random: () => number, { warmestC, coldestC }: typeof SERVED) {
  const open = { from: null, to: null };
  const temperatureC = warmestC + Math.round(random() * (coldestC - warmestC));
  const component = COMPONENTS[Math.floor(random() * COMPONENTS.length)]!;
  const basis = random() < 0.5 ? "water" : "mix";
  const all: AdjustWish[] = [
    { kind: "ice fraction", temperatureC, basis, ...open },
    { kind: "freezing point", ...open },
    { kind: "sweetness", ...open },
    { kind: "component", component, ...open },
    { kind: "total", ...open },
    { kind: "cost", ...open },
  ];
  return all.filter((_, at) => random() < (at < 3 ? 0.6 : 0.4));
}

/** What can be asked for at all. */
const LIMITS: Readonly<Record<AdjustWish["kind"], readonly [number, number]>> = {
  "ice fraction": [0, 1],
  "freezing point": [-60, 0],
  sweetness: [0, 1000],
  component: [0, 100],
  total: [0, 1e9],
  cost: [0, 1e9],
};

/**
 * A recipe, a changed one of which every figure is known, and windows of a random width around those figures,
 * from a thousandth of them to a tenth: so a way to meet them is known.
 */
export function feasibleCase(
  random: () => number,
  stepGrams: number | null,
  temperatures = SERVED,
): FeasibleCase {
  for (;;) {
    const { question, knownGrams } = draft(random, stepGrams);
    try {
      const wishes = wishKinds(random, temperatures).map((wish) => {
        const value = askedValue(wish, { ...question, wishes: [] }, knownGrams);
        const width = Math.abs(value) * 10 ** (-1 - 2 * random());
        const from = wish.kind === "cost" ? null : value - width * random();
        const to = value + width * random();
        const [least, most] = LIMITS[wish.kind];
        return { ...wish, from: from && Math.max(from, least), to: Math.min(to, most) };
      });
      if (wishes.length > 0) return { question: { ...question, wishes }, knownGrams };
    } catch {
      continue; // no freezing point, or no sweetness known: nothing can be wished of it
    }
  }
}
