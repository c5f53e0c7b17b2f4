import { plainWords } from "./recipes/plainWords";

/** The two things a name can mean that does not say whether crystal water is in it. */
export interface HydrateReadings {
  readonly anhydrous: string;
  readonly hydrate: string;
}

/** Names of the trade that leave the crystal water open. */
const READINGS: readonly (readonly [RegExp, HydrateReadings])[] = [
  [
    /^(dextrose|dextrose powder|glucose powder|traubenzucker|corn sugar|grape sugar|dextrose \(glucose\))$/,
    { anhydrous: "glucose", hydrate: "glucose monohydrate" },
  ],
  [
    /^(lactose powder|milchzucker|milk sugar)$/,
    { anhydrous: "lactose", hydrate: "lactose monohydrate" },
  ],
  [
    /^(citric acid powder|zitronensäure|citronensäure)$/,
    { anhydrous: "citric acid", hydrate: "citric acid monohydrate" },
  ],
];

/** The readings of a name that does not say whether it is a hydrate; null when the name is plain. */
export function hydrateReadings(name: string): HydrateReadings | null {
  const plain = plainWords(name);
  return READINGS.find(([pattern]) => pattern.test(plain))?.[1] ?? null;
}
