import type { Layout } from "./kit";
import { aufgabenblaetter } from "./unopened/aufgabenblatt";
import { backstuben } from "./unopened/backstube";
import { banquets } from "./unopened/banquet";
import { benchFormulas } from "./unopened/benchFormula";
import { caseBooks } from "./unopened/caseBook";
import { deckungsbeitraege } from "./unopened/deckungsbeitrag";
import { eisbuecher } from "./unopened/eisbuch";
import { gasthoefe } from "./unopened/gasthof";
import { nachkalkulationen } from "./unopened/nachkalkulation";
import { popStands } from "./unopened/popStand";
import { postenbuecher } from "./unopened/postenbuch";
import { prepLists } from "./unopened/prepList";
import { practicals } from "./unopened/repeats";
import { schmelzwaesser } from "./unopened/schmelzwasser";
import { secondTries } from "./unopened/secondTry";
import { stationenListen } from "./unopened/stationen";

/** Workbooks of people who had not opened anything of ours: classes, kitchens, makers, homes. */
export const unopened: readonly Layout[] = [
  ...[...schmelzwaesser, ...aufgabenblaetter, ...practicals, ...postenbuecher, ...banquets],
  ...[...gasthoefe, ...prepLists, ...deckungsbeitraege, ...popStands, ...nachkalkulationen],
  ...[...backstuben, ...benchFormulas, ...eisbuecher, ...secondTries, ...stationenListen],
  ...caseBooks,
];
