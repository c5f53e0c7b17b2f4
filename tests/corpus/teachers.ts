import type { Layout } from "./kit";
import { abendkurse } from "./teachers/abendkurs";
import { benchesSheets } from "./teachers/benches";
import { classBatches } from "./teachers/classBatch";
import { einkaufKlassen } from "./teachers/einkaufKlasse";
import { examPapers } from "./teachers/examPaper";
import { icesInRowsSheets } from "./teachers/icesInRows";
import { konditorenSheets } from "./teachers/konditoren";
import { probenQuerSheets } from "./teachers/probenQuer";
import { problemCardSheets } from "./teachers/problemCards";
import { projektwochen } from "./teachers/projektwoche";
import { sixBeakerSheets } from "./teachers/sixBeakers";
import { sportsDrinks } from "./teachers/sportsDrink";
import { stationenSheets } from "./teachers/stationen";
import { stoffdatenSheets } from "./teachers/stoffdaten";

/** Sheets of science and cookery teachers. */
export const teachers: readonly Layout[] = [
  ...[...sixBeakerSheets, ...problemCardSheets, ...examPapers, ...sportsDrinks],
  ...[...stationenSheets, ...probenQuerSheets, ...stoffdatenSheets],
  ...[...benchesSheets, ...icesInRowsSheets, ...classBatches],
  ...[...einkaufKlassen, ...konditorenSheets, ...abendkurse, ...projektwochen],
];
