import type { Matrix } from "../../src/foundation/cell";
import { askMix, firstNumber, rowsOf, type RecipeMix } from "../bowl/askMix";

export type MovedQuantity = "freezing point" | "ice of water";

/** What a tenth less and a tenth more of one ingredient makes of the answer. */
export interface Mover {
  readonly name: string;
  readonly less: number;
  readonly more: number;
}

export interface Movers {
  readonly now: number;
  /** Largest movement first. */
  readonly movers: readonly Mover[];
}

export const STEP_FRACTION = 0.1;

function answers(mix: RecipeMix, quantity: MovedQuantity, temperatureC: number): Matrix {
  return quantity === "freezing point"
    ? askMix(mix, "FREEZINGPOINT")
    : askMix(mix, "ICEFRACTION", temperatureC, "water");
}

/** Which ingredient moves the answer most when each in turn is taken a tenth less and more, all else kept. */
export function moversOf(
  mix: RecipeMix,
  quantity: MovedQuantity,
  temperatureC: number,
): Movers | null {
  const rows = rowsOf(mix);
  const now = firstNumber(answers(mix, quantity, temperatureC));
  if (now === null) return null;
  const tries = rows.flatMap((_row, at) => [
    { at, factor: 1 - STEP_FRACTION },
    { at, factor: 1 + STEP_FRACTION },
  ]);
  const grams = rows.map(({ grams: amount }, row) =>
    tries.map(({ at, factor }) => (at === row ? amount * factor : amount)),
  );
  const items = rows.map(({ name }) => [name]);
  const [moved = []] = answers({ ...mix, items, grams }, quantity, temperatureC);
  const movers = rows.flatMap(({ name }, at) => {
    const [less, more] = [moved[at * 2], moved[at * 2 + 1]];
    return typeof less === "number" && typeof more === "number" ? [{ name, less, more }] : [];
  });
  const size = ({ less, more }: Mover) => Math.abs(more - less);
  return { now, movers: movers.sort((one, other) => size(other) - size(one)) };
}
