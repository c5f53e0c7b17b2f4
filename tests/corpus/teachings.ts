import type { Layout } from "./kit";
import { abkuehlungen } from "./teachings/abkuehlung";
import { apprenticeSheets } from "./teachings/apprentices";
import { bildungswerke } from "./teachings/bildungswerk";
import { clubAfternoons } from "./teachings/clubAfternoon";
import { fachklassen } from "./teachings/fachklasse";
import { fortbildungen } from "./teachings/fortbildung";
import { markingGrids } from "./teachings/markingGrid";
import { meisterkurse } from "./teachings/meisterkurs";
import { nightSchools } from "./teachings/nightSchool";
import { pooledResults } from "./teachings/pooled";
import { problemSets } from "./teachings/problemSet";
import { schuelerlabore } from "./teachings/schuelerlabor";
import { trainingDays } from "./teachings/trainingDay";
import { uebungsblaetter } from "./teachings/uebungsblatt";

/** Sheets of people who teach: at schools, in workshops, at universities, in the evening. */
export const teachings: readonly Layout[] = [
  ...[...fachklassen, ...abkuehlungen, ...trainingDays, ...pooledResults, ...uebungsblaetter],
  ...[...clubAfternoons, ...fortbildungen, ...apprenticeSheets, ...schuelerlabore],
  ...[...nightSchools, ...meisterkurse, ...markingGrids, ...bildungswerke, ...problemSets],
];
