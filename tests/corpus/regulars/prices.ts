import type { Chance } from "../random";

/** What a kilogram costs, in cents, from and to; the first that fits. */
const PRICES: readonly (readonly [fits: RegExp, from: number, to: number])[] = [
  [/^(water|tap water|wasser|leitungswasser)$/i, 1, 1],
  [/nuts|pecans|pistachios|nüsse|pistazien/i, 1290, 2690],
  [/coconut milk|kokosmilch/i, 290, 480],
  [/powder|pulver|coconut|kokosraspel/i, 420, 1250],
  [/vodka|rum|spirituose|wodka/i, 1150, 1790],
  [/honey|honig|yolk|eigelb/i, 750, 1390],
  [/dextrose|syrup|sirup|fructose|fruktose|inulin|acid|säure|erythrit|mannit/i, 190, 690],
  [/sugar|zucker|sucrose|saccharose|salt|salz|soda|natron/i, 85, 165],
  [/cream|sahne/i, 390, 560],
  [/milk|milch|yogurt|joghurt/i, 105, 240],
  [/juice|saft|coffee|kaffee|puree|mus$/i, 180, 420],
];

/** A fair price for a kilogram of something. */
export function priceOf(random: Chance, name: string): number {
  const known = PRICES.find(([fits]) => fits.test(name));
  const [, from, to] = known ?? [name, 260, 890];
  return random.whole(from, to) / 100;
}
