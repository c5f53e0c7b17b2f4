import type { AdjustWish } from "../../src/adjust/adjustment";
import { substitution } from "../../src/adjust/substitution";
import { isProblem } from "../../src/foundation/problem";
import type { PaneContext } from "../view";
import type { Asked } from "./asked";
import type { ExchangeWish } from "./Exchange";
import { steer } from "./steered";
import type { SteerLine } from "./steerLines";
import { steerQuestion, usualChoice, type SteerInput } from "./steerQuestion";
import type { NamedWish } from "./wishDrafts";

function named(wish: AdjustWish, { words, numbers }: PaneContext): NamedWish {
  const texts = words.steer;
  switch (wish.kind) {
    case "ice fraction":
      return { key: "ice", name: texts.iceAt(numbers.plain(wish.temperatureC)), wish };
    case "freezing point":
      return { key: "point", name: texts.names.point, wish };
    case "sweetness":
      return { key: "sweetness", name: texts.names.sweetness, wish };
    default:
      return { key: "total", name: texts.keptTotal, wish };
  }
}

/** Exchanges one ingredient for another at equal effect; a sentence when the form cannot be read. */
export function askExchange(
  input: Omit<SteerInput, "wishes">,
  { away, by, keepsSweetness }: ExchangeWish,
  servingC: number,
  context: PaneContext,
): Asked | string {
  const known = input.lines.findIndex(({ name }) => name === by);
  const added: SteerLine = { name: by, grams: 0, place: null, usual: false };
  const lines = known >= 0 ? input.lines : [...input.lines, added];
  const choices =
    known >= 0 ? input.choices : [...input.choices, usualChoice(added, null, context)];
  const question = steerQuestion({ ...input, lines, choices, wishes: [] }, context);
  if (typeof question === "string") return question;
  const place = known >= 0 ? known : lines.length - 1;
  const chosen = { away, leftGrams: 0, by: place, servingC, keepsSweetness };
  const exchange = substitution(question, chosen);
  if (isProblem(exchange)) return context.words.said(exchange.message);
  const wishes = exchange.wishes.map((wish) => named(wish, context));
  return { question: exchange, lines, wishes, steered: steer(exchange), servingC };
}
