import { useState } from "preact/hooks";
import type { Matrix } from "../../src/foundation/cell";
import { isProblem } from "../../src/foundation/problem";
import { callFunction } from "../../src/worksheet/callFunction";
import type { Aim } from "../aims/aim";
import { useAim } from "../aims/useAim";
import type { RecognisedRecipe } from "../bowl/recognised";
import { USUAL_SERVING_C } from "../bowl/usualTemperatures";
import { pricesPerKg } from "../prices/pricesPerKg";
import { usePriceColumns } from "../prices/usePriceColumns";
import type { PaneContext } from "../view";
import type { Asked } from "./asked";
import { askExchange } from "./askExchange";
import type { ExchangeWish } from "./Exchange";
import { outcomeSentence } from "./sentences";
import { steer } from "./steered";
import { isStrong, type SteerLine } from "./steerLines";
import { steerQuestion, usualChoice, type LineChoice } from "./steerQuestion";
import type { WishesValue } from "./Wishes";
import { readWishes } from "./wishDrafts";

/** Below this mass a gram is too coarse a step. */
const WHOLE_GRAMS_FROM = 100;
const HALF_GRAM = 0.5;

const sum = (lines: readonly SteerLine[]) => lines.reduce((all, { grams }) => all + grams, 0);

/** What the form holds, and how it is asked; any change takes the last answer away. */
export function useSteering(
  context: PaneContext,
  recipe: RecognisedRecipe,
  given: readonly SteerLine[],
  own: Matrix | null,
) {
  const { words, numbers, announce } = context;
  const totalGrams = sum(given);
  const { aim, choose } = useAim(context, recipe);
  const [others, setOthers] = useState<Omit<WishesValue, "target">>({
    drafts: [],
    keepsTotal: true,
    wholeGrams: recipe.unit !== "%" && totalGrams >= WHOLE_GRAMS_FROM,
  });
  const wishes = { ...others, target: aim };
  const [added, setAdded] = useState<readonly SteerLine[]>([]);
  const [changed, setChanged] = useState<Readonly<Record<number, LineChoice>>>({});
  // With what it was said about: target and own ingredients may change in another view, or on the sheet.
  const [said, setSaid] = useState<{ what: Asked | string; aim: Aim | null; own: Matrix | null }>();
  const what = said !== undefined && said.aim === aim && said.own === own ? said.what : null;
  const trouble = typeof what === "string" ? what : null;
  const asked = typeof what === "string" ? null : what;
  const asksPrices = wishes.drafts.some(({ key }) => key === "cost");
  const { columns, fault } = usePriceColumns(context, recipe, asksPrices);
  const prices = pricesPerKg(columns);
  const lines = [...given, ...added];
  const priceOf = ({ place }: SteerLine) => (place === null ? null : (prices?.[place] ?? null));
  const choices = lines.map((line, at) => {
    const usual = usualChoice(line, priceOf(line), context);
    const own = changed[at] ?? usual;
    return own.price === "" ? { ...own, price: usual.price } : own;
  });
  const forget = () => setSaid(undefined);
  const show = (next: Asked | string) => {
    setSaid({ what: next, aim, own });
    announce(typeof next === "string" ? next : outcomeSentence(next, context));
  };
  const iceDraft = wishes.drafts.find(({ key }) => key === "ice");
  const servingC =
    wishes.target?.temperatureC ?? numbers.read(iceDraft?.temperature ?? "") ?? USUAL_SERVING_C;
  const input = { lines, choices, own, wholeGrams: wishes.wholeGrams };
  return {
    ...{ wishes, lines, choices, asked, trouble, fault, totalGrams, asksPrices, servingC },
    pricesFound: prices !== null,
    changeWishes: (next: WishesValue) => {
      forget();
      setOthers(next);
      if (next.target !== aim) choose(next.target);
    },
    choose: (at: number, next: LineChoice) => {
      forget();
      setChanged({ ...changed, [at]: next });
    },
    /** What is wrong with the name, or null when the ingredient was let in. */
    add: (name: string): string | null => {
      if (lines.some((line) => line.name === name)) return words.steer.alreadyThere(name);
      if (isProblem(callFunction("COMPONENT", name, 1, "total", own)[0]?.[0])) {
        return words.steer.unknownItem(name);
      }
      forget();
      setAdded([...added, { name, grams: 0, place: null, usual: true }]);
      if (isStrong(name, own)) announce(words.steer.strongItem(name));
      return null;
    },
    find: () => {
      const within = wishes.wholeGrams ? HALF_GRAM : 0;
      const keptTotal = wishes.keepsTotal ? { grams: totalGrams, within } : null;
      const read = readWishes({ ...wishes, keptTotal }, context);
      if (typeof read === "string") {
        show(read);
        return;
      }
      const question = steerQuestion({ ...input, wishes: read }, context);
      show(
        typeof question === "string"
          ? question
          : { question, lines, wishes: read, steered: steer(question), servingC },
      );
    },
    exchange: (wish: ExchangeWish) => show(askExchange(input, wish, servingC, context)),
  };
}
