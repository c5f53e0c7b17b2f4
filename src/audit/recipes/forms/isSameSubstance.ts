import { pureSolute } from "../../solutions/pureSolute";

/** "Kochsalz" and "NaCl" are one substance. */
export const isSameSubstance = (one: string | null, other: string | null): boolean =>
  one !== null &&
  other !== null &&
  (one === other || (pureSolute(one) !== null && pureSolute(one) === pureSolute(other)));
