import { barTrays } from "./commuters/barTrays";
import { cardBoxes } from "./commuters/cupText";
import { freibaeder } from "./commuters/freibad";
import { frozenBars } from "./commuters/frozenBar";
import { gaertnereien } from "./commuters/gaertnerei";
import { herbergen } from "./commuters/herberge";
import { jeKilos } from "./commuters/jeKilo";
import { protoGrids } from "./commuters/protoGrid";
import { salzreihen } from "./commuters/salzreihe";
import { schulkuechen } from "./commuters/schulkuecheDatei";
import { slashUnits } from "./commuters/slashUnits";
import { stoffspalten } from "./commuters/stoffspalten";
import { sweetenerSheets } from "./commuters/sweeteners";
import { zooCafes } from "./commuters/zooCafe";
import type { Layout } from "./kit";

/** Sheets of people who come by every day: a zoo kiosk, a pool, a hostel, a nursery, schools. */
export const commuters: readonly Layout[] = [
  ...[...zooCafes, ...protoGrids, ...slashUnits, ...cardBoxes, ...frozenBars, ...barTrays],
  ...[...sweetenerSheets, ...freibaeder, ...jeKilos, ...salzreihen, ...stoffspalten],
  ...[...schulkuechen, ...herbergen, ...gaertnereien],
];
