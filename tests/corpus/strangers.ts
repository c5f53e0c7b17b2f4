import type { Layout } from "./kit";
import { dose } from "./strangers/dose";
import { etiketten } from "./strangers/etiketten";
import { heimkueche } from "./strangers/heimkueche";
import { hofladen } from "./strangers/hofladen";
import { kalkulation } from "./strangers/kalkulation";
import { konditorei } from "./strangers/konditorei";
import { produktion } from "./strangers/produktion";
import { schule } from "./strangers/schule";
import { sole } from "./strangers/sole";
import { vergleich } from "./strangers/vergleich";
import { volkshochschule } from "./strangers/volkshochschule";

/** Layouts by people who never saw how the audit works. */
export const strangers: readonly Layout[] = [
  ...[...kalkulation, ...produktion, ...sole, ...konditorei, ...hofladen, ...etiketten],
  ...[...schule, ...vergleich, ...volkshochschule, ...heimkueche, ...dose],
];
