import type { StrangersBook } from "./strangersBook";
import { balances } from "./workshopBooks/balances";
import { longer } from "./workshopBooks/longer";
import { masters } from "./workshopBooks/masters";
import { odd } from "./workshopBooks/odd";
import { pastry } from "./workshopBooks/pastry";
import { swaps } from "./workshopBooks/swaps";
import { targets } from "./workshopBooks/targets";
import { tinkerers } from "./workshopBooks/tinkerers";
import { trials } from "./workshopBooks/trials";

/** Workbooks of recipe developers, farmers, pastry chefs and tinkerers. */
export const workshopBooks: readonly StrangersBook[] = [
  ...trials,
  ...balances,
  ...swaps,
  ...targets,
  ...masters,
  ...tinkerers,
  ...pastry,
  ...longer,
  ...odd,
];
