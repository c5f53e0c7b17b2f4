import { normalName } from "../../catalogue/normalName";
import { isProblem, outsideValidity, type Problem } from "../../foundation/problem";
import type { Result } from "../../foundation/result";
import { wholeItem } from "../../recipe/catalogueItem";
import { componentGrams } from "../../recipe/components";
import { freezingPointOfMix } from "../../recipe/freezing";
import { mixOfItem } from "../../recipe/mixOf";
import { cautionWords } from "../../recipe/cautionWords";
import { allergenWords } from "../../recipe/allergenWords";
import type { Item } from "../../recipe/item";
import { cardText } from "../card";
import { ingredientCard } from "../cards";
import { componentNamed, defineFunction, item, text } from "../define";

const WORDS = new Map<string, (item: Item) => Result<number | string>>(
  Object.entries({
    source: ({ source }: Item) => source,
    allergens: allergenWords,
    caution: cautionWords,
    cautions: cautionWords,
    "g per ml": ({ name, facts }: Item) => facts.gramsPerMl?.value ?? notKnown("g per mL", name),
    "g per piece": ({ name, facts }: Item) =>
      facts.gramsPerPiece?.value ?? notKnown("g per piece", name),
    note: ({ assumptions }: Item) => assumptions.join("; "),
    card: (item: Item) => cardText(ingredientCard(item)),
  }),
);

const notKnown = (what: string, name: string) =>
  outsideValidity(
    `component: the catalogue has no "${what}" of "${name}"; a figure with a source is expected before it is shown.`,
  );

/** A freezing point is none of an ingredient's figures: where it is computed, or why there is none. */
function freezingPointAsked(item: Item): Problem {
  const mix = mixOfItem(item, 100);
  const point = isProblem(mix) ? mix : freezingPointOfMix(mix);
  const why = isProblem(point)
    ? `for "${item.name}" there is none: ${point.message.replace(/^grams: /, "")}`
    : `=RIME.FREEZINGPOINT("${item.name}",100) is expected, and answers ${point.toPrecision(3)} °C.`;
  return outsideValidity(`component: a freezing point is computed, not looked up; ${why}`);
}

export const ingredient = defineFunction({
  name: "INGREDIENT",
  summary: "What 100 g of an ingredient hold, or what is known of it.",
  args: {
    name: item("Name of the ingredient"),
    component: text(
      "A component such as water, sugars, fat, a solute's name; or source, allergens, caution, g per mL, g per piece, note, card",
      'a component, "source", "allergens" or "caution"',
    ),
  },
  unit: "g per 100 g",
  sources: ["usdaSr26"],
  example: { formula: '=RIME.INGREDIENT("whole milk","lactose")', from: "computed here" },
  method:
    'The catalogue\'s composition, brought to a sum of exactly 100 g. Of ingredients whose pieces do not dissolve the true composition is given; in a mix all of them but fat and protein counts as inert. "card" is all that is known in one cell: a card to open where the spreadsheet has cards, one line elsewhere.',
  seeAlso: ["INGREDIENTS", "COMPONENT"],
  card: ({ name: found, component }) =>
    component.toLowerCase() === "card" ? ingredientCard(found) : null,
  compute: ({ name: found, component }) => {
    const words = WORDS.get(component.toLowerCase());
    if (words !== undefined) return words(found);
    if (normalName(component) === "freezing point") return freezingPointAsked(found);
    const asked = componentNamed(component, "component");
    if (isProblem(asked)) return asked;
    if (found.origin.kind === "water lost") {
      return outsideValidity('name: "water lost" has no composition; an ingredient is expected.');
    }
    const mix = mixOfItem(wholeItem(found), 100);
    return isProblem(mix) ? mix : componentGrams(mix, asked);
  },
});
