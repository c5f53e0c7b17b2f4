import { rootBetween } from "../engine/rootBetween";
import { isProblem, outsideValidity, type Problem } from "../foundation/problem";
import type { Result } from "../foundation/result";
import { exchangeOf, type Exchange, type Hold } from "./exchange";
import type { Item } from "./item";
import type { Mix } from "./mix";
import { notFood } from "./notFood";
import { linearAmount } from "./linearAmount";
import { quantityOfMix } from "./quantity";
import type { Wish } from "./wish";

const STEPS = 40;

interface Trial {
  readonly grams: number;
  readonly value: number;
}

/** Amounts from nothing to the most, closer together where they are small. */
function trials({ mostGrams, mixWith }: Exchange, mix: Mix, wish: Wish) {
  const scale = mix.totalGrams;
  const end = mostGrams / (scale + mostGrams);
  const found: Trial[] = [];
  let lastProblem: Problem | null = null;
  let before: { readonly grams: number; readonly fails: boolean } | null = null;
  for (let step = 0; step <= STEPS; step += 1) {
    const share = (end * step) / STEPS;
    const grams = step === STEPS ? mostGrams : (scale * share) / (1 - share);
    const value = valueWith(mixWith, grams, wish);
    const fails = isProblem(value);
    if (before !== null && before.fails !== fails) {
      found.push(
        ...edge(mixWith, wish, fails ? before.grams : grams, fails ? grams : before.grams),
      );
    }
    if (isProblem(value)) lastProblem = value;
    else found.push({ grams, value });
    before = { grams, fails };
  }
  return { found, lastProblem };
}

/** The last amount that still has an answer, between one that has and one that has none. */
function edge(
  mixWith: Exchange["mixWith"],
  wish: Wish,
  answered: number,
  failing: number,
): Trial[] {
  let [good, bad] = [answered, failing];
  let last: Trial | null = null;
  for (let halving = 0; halving < 40; halving += 1) {
    const grams = (good + bad) / 2;
    const value = valueWith(mixWith, grams, wish);
    if (isProblem(value)) bad = grams;
    else {
      good = grams;
      last = { grams, value };
    }
  }
  return last === null ? [] : [last];
}

function valueWith(mixWith: Exchange["mixWith"], grams: number, wish: Wish): Result<number> {
  const mix = mixWith(grams);
  return isProblem(mix) ? mix : quantityOfMix(mix, wish.quantity, wish.temperatureC);
}

/** The neighbouring trials between which the wish is met, nearest to the amount that is there now. */
function bracket(found: readonly Trial[], value: number, now: number) {
  const pairs = found
    .slice(1)
    .map((upper, index) => [found[index] ?? upper, upper] as const)
    .filter(([lower, upper]) => (lower.value - value) * (upper.value - value) <= 0);
  const away = ([lower, upper]: readonly [Trial, Trial]) =>
    Math.max(lower.grams - now, now - upper.grams, 0);
  return [...pairs].sort((a, b) => away(a) - away(b))[0];
}

const rounded = (value: number) => Number(value.toPrecision(4));

function unreachable(found: readonly Trial[], item: Item, { quantity, value }: Wish): Problem {
  const values = found.map((trial) => trial.value);
  const from = rounded(Math.min(...values));
  const to = rounded(Math.max(...values));
  const reach =
    from === to
      ? `it is ${from} with any amount, and only that is answered`
      : `it reaches from ${from} to ${to}, and a value in between is expected`;
  return outsideValidity(
    `value: no amount of "${item.name}" makes the ${quantity} ${value}; ${reach}.`,
  );
}

/**
 * Grams of an item in all with which a quantity of the mix becomes a value: by the linear structure where it
 * leads there, else by search; the amount put back gives the value. A problem with the reachable range when none does.
 */
export function amountForWish(
  mix: Mix,
  item: Item,
  wish: Wish,
  options: { readonly replacing: Item | null; readonly hold: Hold },
): Result<number> {
  const exchange = exchangeOf(mix, item, options.replacing, options.hold);
  if (isProblem(exchange)) return exchange;
  const tried = exchange.mixWith(Math.min(1, exchange.mostGrams));
  const refusal = notFood(mix) ?? (isProblem(tried) ? null : notFood(tried));
  if (refusal !== null) return refusal;
  const direct = linearAmount(exchange, mix, wish);
  if (direct !== null && meets(exchange, direct, wish)) return direct;
  return bySearch(exchange, mix, item, wish);
}

const CLOSE = 1e-10;

function meets({ mixWith }: Exchange, grams: number, wish: Wish): boolean {
  const value = valueWith(mixWith, grams, wish);
  return !isProblem(value) && Math.abs(value - wish.value) <= CLOSE;
}

/** Where the linear way does not lead there: trial amounts that bracket the wish, then root finding. */
function bySearch(exchange: Exchange, mix: Mix, item: Item, wish: Wish): Result<number> {
  const { found, lastProblem } = trials(exchange, mix, wish);
  if (found.length === 0 && lastProblem !== null) return lastProblem;
  const now = mix.parts.reduce(
    (sum, part) => (part.item.name === item.name ? sum + part.grams : sum),
    0,
  );
  const between = bracket(found, wish.value, now);
  if (between === undefined) return unreachable(found, item, wish);
  const missing = (grams: number): number => {
    const value = valueWith(exchange.mixWith, grams, wish);
    return isProblem(value) ? NaN : value - wish.value;
  };
  return rootBetween(missing, between[0].grams, between[1].grams) ?? unreachable(found, item, wish);
}
