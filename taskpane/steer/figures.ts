import type { PaneContext } from "../view";
import type { Asked } from "./asked";
import { askedValue, askOf, shareOf, type AskedMix } from "./askMixOf";
import { wishText, type WishKey } from "./wishDrafts";

/** One figure of a mix, ready to be shown. */
export interface Figure {
  readonly label: string;
  readonly text: string;
}

const DASH = "–";

/** Wishes whose quantity is not among the figures in any case. */
const FURTHER: readonly WishKey[] = ["fat", "sugars", "cost"];

/** What freezes, sweetness and solids with one standard uncertainty, then what was wished and the sum. */
export function figuresOf(
  mix: AskedMix,
  { servingC, wishes, question }: Pick<Asked, "servingC" | "wishes" | "question">,
  context: PaneContext,
): readonly Figure[] {
  const { words, numbers } = context;
  const texts = words.steer;
  const point = askOf(mix, "FREEZINGPOINT");
  const pointBand = askOf(mix, "UNCERTAINTY", "freezing point", null);
  const ice = askOf(mix, "ICEFRACTION", servingC, "water");
  const iceBand = askOf(mix, "UNCERTAINTY", "ice fraction", servingC);
  const sweetness = askOf(mix, "SWEETNESS");
  const sweetnessBand = askOf(mix, "UNCERTAINTY", "sweetness", null);
  const total = askOf(mix, "COMPONENT", "total");
  const solids = shareOf(mix, "solids");
  const solidsBand = askOf(mix, "UNCERTAINTY", "solids", null);
  const solidsBandGrams = typeof solidsBand === "number" ? solidsBand * 100 : null; // per 100 g, as the solids
  const banded = (value: unknown, band: unknown, write: (value: number, band: number) => string) =>
    typeof value === "number" && typeof band === "number" ? write(value, band) : DASH;
  const inUnit = (unit: string) => (value: number, band: number) =>
    numbers.withBand(value, band, unit);
  const plain = (value: unknown, unit: string) =>
    typeof value === "number" ? `${numbers.fixed(value, 1)}\u202f${unit}` : DASH;
  const further = wishes.flatMap((named) => {
    if (!FURTHER.includes(named.key)) return [];
    const value = askedValue(named.wish, mix, question.pricesPerKg ?? []);
    return [{ label: named.name, text: value === null ? DASH : wishText(named, value, context) }];
  });
  return [
    { label: texts.figures.point, text: banded(point, pointBand, inUnit("°C")) },
    { label: texts.iceFigure(numbers.plain(servingC)), text: banded(ice, iceBand, numbers.share) },
    { label: texts.figures.sweetness, text: banded(sweetness, sweetnessBand, inUnit("g")) },
    { label: texts.figures.solids, text: banded(solids, solidsBandGrams, inUnit("g")) },
    ...further,
    { label: texts.figures.total, text: plain(total, "g") },
  ];
}
