import { classBooks } from "./classBooks";
import { counterBooks } from "./counterBooks";
import { pantryBooks } from "./pantryBooks";
import type { StrangersBook } from "./strangersBook";
import { studioBooks } from "./studioBooks";
import { workshopBooks } from "./workshopBooks";

type Lots = Readonly<Record<string, readonly StrangersBook[]>>;

/** Lots that whoever mended rules has looked at; `strangers.test.ts` holds that nothing wrong is told of them. */
export const seenBooks: Lots = { counterBooks, classBooks, workshopBooks };

/** Lots that nobody who mends rules has looked at; once somebody does, they belong with the others. */
export const heldOutBooks: Lots = { pantryBooks, studioBooks };
