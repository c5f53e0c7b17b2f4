import { arbeitsblaetter } from "./boarders/arbeitsblatt";
import { bankette } from "./boarders/bankett";
import { bombenLayouts } from "./boarders/bomben";
import { eiswagen } from "./boarders/eiswagen";
import { gefrierfaecher } from "./boarders/gefrierfach";
import { hotels } from "./boarders/hotel";
import { kochgruppen } from "./boarders/kochgruppen";
import { konditoren } from "./boarders/konditor";
import { messreihen } from "./boarders/messreihe";
import { reihen } from "./boarders/reihe";
import { bilanzen } from "./boarders/technik";
import { vorraete } from "./boarders/vorrat";
import type { Layout } from "./kit";

/** German sheets of six people, two each: written by somebody who does not know how the audit finds things. */
export const boarders: readonly Layout[] = [
  ...[...konditoren, ...bombenLayouts, ...bilanzen, ...reihen, ...arbeitsblaetter, ...kochgruppen],
  ...[...hotels, ...bankette, ...eiswagen, ...vorraete, ...messreihen, ...gefrierfaecher],
];
