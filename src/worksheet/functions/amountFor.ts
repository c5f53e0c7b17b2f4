import { badInput, isProblem } from "../../foundation/problem";
import type { Result } from "../../foundation/result";
import { amountForWish } from "../../recipe/amountFor";
import { HOLDS } from "../../recipe/exchange";
import { QUANTITIES, type Quantity } from "../../recipe/quantity";
import {
  choice,
  defineFunction,
  item,
  number,
  optional,
  optionalTemperature,
  ownIngredients,
  recipe,
} from "../define";

const LIMITS: Readonly<Record<Quantity, readonly [from: number, to: number]>> = {
  "freezing point": [-60, 0],
  "ice fraction": [0, 1],
  "water activity": [0, 1],
  sweetness: [0, 200],
};

/** The temperature at which a quantity is meant; a problem where it is needed and left out. */
function temperatureFor(quantity: Quantity, temperatureC: number | null): Result<number> {
  if (temperatureC !== null) return temperatureC;
  return quantity === "ice fraction"
    ? badInput(
        "temperature: this is left out; for the ice fraction one from -60 to 100 °C is expected.",
      )
    : 25;
}

export const amountFor = defineFunction({
  name: "AMOUNTFOR",
  summary: "Grams of an item in all with which a quantity of the mix becomes a value.",
  args: {
    mix: recipe(),
    item: item("Ingredient to solve for, in the recipe already or new"),
    quantity: choice("What is to be met", QUANTITIES),
    value: number("The value to be met", { from: -60, to: 200 }),
    temperature: optionalTemperature(
      "Temperature of the mix, needed for ice fraction",
      { from: -60, to: 100 },
      "25 for water activity",
    ),
    ownIngredients: ownIngredients(),
    replacing: optional(item("Ingredient that gives way; none when left out")),
    hold: choice("What is held: the other amounts, the mass or the sweetness", HOLDS, {
      default: "others",
    }),
  },
  unit: "g",
  sources: ["stokesRobinson1966", "chandrupatla1997"],
  example: {
    formula: '=RIME.AMOUNTFOR({"water";"sucrose"},{200;70},"glucose","ice fraction",0.7,-14)',
    from: "computed here",
  },
  method:
    "Changes the amount of the item alone (hold others), all others in proportion (hold mass), or in exchange for `replacing`, gram for gram or at equal sweetness, until the quantity has the value. At a fixed temperature everything is linear in the grams, so two trial amounts give the answer; where freezing ends (Tm′) it is bracketed and searched. Refused for what is no food.",
  seeAlso: ["CHECK", "ICEFRACTION", "FREEZINGPOINT"],
  compute: ({ mix, item: wanted, quantity, value, temperature, replacing, hold }) => {
    const [from, to] = LIMITS[quantity];
    if (value < from || value > to) {
      return badInput(
        `value: ${value} is out of range for the ${quantity}; it must be from ${from} to ${to}.`,
      );
    }
    const temperatureC = temperatureFor(quantity, temperature);
    if (isProblem(temperatureC)) return temperatureC;
    return amountForWish(mix, wanted, { quantity, value, temperatureC }, { replacing, hold });
  },
});
