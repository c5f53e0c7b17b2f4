import { handedDown } from "./pantryBooks/handedDown";
import { hofUndCafe } from "./pantryBooks/hofUndCafe";
import { inherited } from "./pantryBooks/inherited";
import { oddOnesOut } from "./pantryBooks/oddOnesOut";
import { stallsAndVans } from "./pantryBooks/stallsAndVans";
import { trialsAndBalances } from "./pantryBooks/trialsAndBalances";
import { versuche } from "./pantryBooks/versuche";
import { vereinUndKantine } from "./pantryBooks/vereinUndKantine";
import type { StrangersBook } from "./strangersBook";

export const pantryBooks: readonly StrangersBook[] = [
  ...stallsAndVans,
  ...hofUndCafe,
  ...trialsAndBalances,
  ...versuche,
  ...inherited,
  ...vereinUndKantine,
  ...oddOnesOut,
  ...handedDown,
];
