import type { Solute } from "../catalogue/solute";
import { dissolvedGrams, gramsOfSubstance } from "./amounts";
import { soluteContent } from "./catalogueItem";
import type { Dose, Mix } from "./mix";

const ofKinds =
  (...kinds: readonly Dose["substance"]["kind"][]) =>
  ({ doses }: Mix): number =>
    doses.reduce(
      (sum, { substance, grams }) => (kinds.includes(substance.kind) ? sum + grams : sum),
      0,
    );

const ethanolGrams = (mix: Mix): number => gramsOfSubstance(mix, "ethanol");

/** What a mix can be asked for besides single solutes, each in g. */
const NAMED = {
  total: ({ totalGrams }: Mix) => totalGrams,
  water: ({ waterGrams }: Mix) => waterGrams,
  /** Everything but water and alcohol. */
  solids: (mix: Mix) => mix.totalGrams - mix.waterGrams - mix.pieceWaterGrams - ethanolGrams(mix),
  "dissolved solids": (mix: Mix) => dissolvedGrams(mix) - ethanolGrams(mix),
  dissolved: dissolvedGrams,
  sugars: ofKinds("sugar"),
  polyols: ofKinds("polyol"),
  "higher saccharides": (mix: Mix) => gramsOfSubstance(mix, "higher saccharides"),
  acids: (mix: Mix) => ofKinds("acid")(mix) + gramsOfSubstance(mix, "fruit acids"),
  fat: ({ fatGrams }: Mix) => fatGrams,
  protein: ({ proteinGrams }: Mix) => proteinGrams,
  ash: ({ ashGrams }: Mix) => ashGrams,
  inert: ({ inertGrams }: Mix) => inertGrams,
} as const;

export type NamedComponent = keyof typeof NAMED;

export const NAMED_COMPONENTS = Object.keys(NAMED) as readonly NamedComponent[];

export type Component = NamedComponent | { readonly solute: Solute };

/** Grams of a component in a mix. A hydrate is asked for as what it gives: the anhydrous solute. */
export function componentGrams(mix: Mix, component: Component): number {
  if (typeof component === "string") return Math.max(NAMED[component](mix), 0);
  const [given] = soluteContent(component.solute).substances;
  return gramsOfSubstance(mix, given?.[0].name ?? component.solute.name);
}

export interface Share {
  readonly name: string;
  readonly grams: number;
}

/** The parts of a mix that add up to its mass, the largest first. */
export function compositionOf(mix: Mix): readonly Share[] {
  const { waterGrams, fatGrams, proteinGrams, ashGrams, inertGrams, doses } = mix;
  const byName = new Map<string, number>();
  for (const { substance, grams } of doses) {
    byName.set(substance.name, (byName.get(substance.name) ?? 0) + grams);
  }
  const parts: readonly (readonly [string, number])[] = [
    ["water", waterGrams],
    ...byName,
    ["fat", fatGrams],
    ["protein", proteinGrams],
    ["ash", ashGrams],
    ["inert", inertGrams],
  ];
  return parts
    .filter(([, grams]) => grams > 0)
    .map(([name, grams]) => ({ name, grams }))
    .sort((a, b) => b.grams - a.grams);
}
