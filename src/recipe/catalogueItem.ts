import type { Ingredient } from "../catalogue/ingredient";
import { kitchenFactsOf } from "../catalogue/kitchenFacts";
import type { Solute } from "../catalogue/solute";
import { solutes } from "../catalogue/solutes";
import { bibliography } from "../foundation/bibliography";
import type { Content, Item } from "./item";
import { higherSaccharidesOf, substanceOf, type Substance } from "./substance";

const soluteByName = new Map(solutes.map((solute) => [solute.name, solute]));
const items = new Map<Solute | Ingredient, Item>();

/** A solute that the catalogue itself names. @throws when there is none: our mistake */
export function soluteNamed(name: string): Solute {
  const solute = soluteByName.get(name);
  if (solute === undefined) throw new Error(`The catalogue has no solute ${name}.`);
  return solute;
}

const NOTHING: Content = {
  ...{ water: 0, fat: 0, protein: 0, ash: 0, inert: 0, pieceWater: 0 },
  substances: [],
};

/** What one gram of a solute gives: itself, or for a hydrate the anhydrous solute and water. */
export function soluteContent(solute: Solute): Content {
  const { hydrateOf } = solute;
  if (hydrateOf === undefined) return { ...NOTHING, substances: [[substanceOf(solute), 1]] };
  const { waterMassFraction } = hydrateOf;
  const parent = substanceOf(soluteNamed(hydrateOf.solute));
  return {
    ...NOTHING,
    water: waterMassFraction,
    substances: [[parent, 1 - waterMassFraction]],
  };
}

/** What one gram of an ingredient gives; the parts are brought to a sum of exactly 1. */
function ingredientContent({ composition, inclusion = false }: Ingredient): Content {
  const { water, fat = 0, protein = 0, ash = 0, inert = 0, higherSaccharides } = composition;
  const substances: [Substance, number][] = Object.entries(composition.solutes ?? {}).map(
    ([name, grams]) => [substanceOf(soluteNamed(name)), grams],
  );
  if (higherSaccharides !== undefined && higherSaccharides.grams > 0) {
    const { grams, molarMassGPerMol } = higherSaccharides;
    substances.push([higherSaccharidesOf(molarMassGPerMol), grams]);
  }
  const dissolved = substances.reduce((sum, [, grams]) => sum + grams, 0);
  const scale = 1 / (water + fat + protein + ash + inert + dissolved);
  const share = (grams: number) => grams * scale;
  const undissolved = { fat: share(fat), protein: share(protein), ash: share(ash) };
  if (inclusion) {
    const pieces = share(inert + water + dissolved);
    return { ...undissolved, water: 0, substances: [], inert: pieces, pieceWater: share(water) };
  }
  return {
    ...undissolved,
    water: share(water),
    substances: substances.map(([substance, grams]) => [substance, share(grams)]),
    inert: share(inert),
    pieceWater: 0,
  };
}

function fromSolute(solute: Solute): Item {
  return {
    name: solute.name,
    content: soluteContent(solute),
    spread: {},
    source: bibliography[solute.molarMass.source],
    origin: { kind: "solute", solute },
    ...common(solute),
  };
}

function fromIngredient(ingredient: Ingredient): Item {
  const { name, spread, inclusion = false, source } = ingredient;
  const perGram = Object.entries(spread).map(([part, grams]) => [part, grams / 100] as const);
  return {
    name,
    content: ingredientContent(ingredient),
    spread: inclusion ? {} : Object.fromEntries(perGram),
    source: bibliography[source],
    origin: { kind: "ingredient", ingredient },
    ...common(ingredient),
  };
}

const common = (entry: Solute | Ingredient) => ({
  facts: kitchenFactsOf(entry),
  allergenText: null,
  cautionText: null,
  assumptions: entry.note === undefined ? [] : [entry.note],
});

/** A solute or ingredient of the catalogue as a recipe's item. Made once. */
export function catalogueItem(
  match:
    | { readonly kind: "solute"; readonly solute: Solute }
    | { readonly kind: "ingredient"; readonly ingredient: Ingredient },
): Item {
  const key = match.kind === "solute" ? match.solute : match.ingredient;
  const known = items.get(key);
  if (known !== undefined) return known;
  const item =
    match.kind === "solute" ? fromSolute(match.solute) : fromIngredient(match.ingredient);
  items.set(key, item);
  return item;
}

/** The item with everything it is made of, also where its pieces do not dissolve: for looking up. */
export function wholeItem(item: Item): Item {
  const { origin } = item;
  if (origin.kind !== "ingredient" || origin.ingredient.inclusion !== true) return item;
  return { ...item, content: ingredientContent({ ...origin.ingredient, inclusion: false }) };
}
