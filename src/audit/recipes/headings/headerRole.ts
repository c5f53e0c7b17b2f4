import { remembered } from "../../../foundation/remembered";
import { answerRole, type AnswerRole } from "./answerRole";
import { plainWords } from "./plainWords";
import { classWords } from "../roles/classWords";
import { drinkWords } from "../roles/drinkWords";
import { heldWords } from "../roles/heldWords";
import { listWords } from "../roles/listWords";
import { measuredWords } from "../roles/measuredWords";
import { nameWords } from "../roles/nameWords";
import { targetWords } from "../roles/targetWords";
import { temperatureWords } from "../roles/temperatureWords";
import { totalWords } from "../roles/totalWords";
import { withoutSymbol } from "./withoutSymbol";
import type { Words } from "../roles/words";
import { unitFromHeader } from "../amounts/unit";

/** What is looked for first, the more particular before the more general. */
const ROLES = [
  ["depression", classWords.constantTimes],
  ["cryoscopic constant", classWords.constantOfWater],
  ["other", classWords.ofPureWater],
  ["other", classWords.undissolved],
  ["amount", classWords.massOfSolute],
  ["unit", listWords.unit],
  ["measured", measuredWords],
  ["target", targetWords],
  ["price", listWords.price],
  ["amount", listWords.perLot],
  ["molar mass", classWords.molarMass],
  ["molality", classWords.molality],
  ["moles", classWords.moles],
  ["particles", classWords.particles],
  ["cryoscopic constant", classWords.constant],
  ["abv", drinkWords.strength],
  ["ethanol", drinkWords.ethanol],
  ["counts as solute", classWords.countsAsSolute],
] as const satisfies RoleWords;

/** What is looked for when a header names no answer. */
const MORE_ROLES = [
  ["temperature", temperatureWords.any],
  ["name", nameWords],
  ["total", totalWords],
  ["total", heldWords],
  ["composition", listWords.perWater],
  ["amount", listWords.shareOnly],
  ["composition", listWords.composition],
  ["other", listWords.stock],
  ["amount", listWords.massInUnit],
  ["other", listWords.other],
  ["amount", listWords.amount],
] as const satisfies RoleWords;

type RoleWords = readonly (readonly [string, Words])[];

/** What a column (or a row's label) is about. */
export type Role = AnswerRole | (typeof ROLES | typeof MORE_ROLES)[number][0];

/** The factor is a small i; the capital numbers trials. */
const isNumeral = (text: string): boolean => text.trim() === "I";

const TEXTS_KEPT = 500_000;

/** What a header or label is about, or null when it says nothing known. */
export const headerRole = remembered(TEXTS_KEPT, roleOf);

/** "1. Moles = grams ÷ mass of one mole": how it is worked out is said behind what it is. */
const STEP = /^((step|schritt) ?\d{1,2}\s*[.):]|\d{1,2}\s*[.)])\s*/;
const WORKED_OUT = /^([^=]{2,}?)\s*=.*[·∙⋅×*÷/:+−-]/;
/** The other way round: "Kf × b × i = ΔTf (K)". */
const GIVES = /^[^=]*[·∙⋅×*÷][^=]*=\s*([^=]{2,})$/;

function roleOf(text: string): Role | null {
  const plain = withoutSymbol(plainWords(text).replace(STEP, ""));
  const [, worked] = GIVES.exec(plain) ?? WORKED_OUT.exec(plain) ?? [];
  return (worked === undefined ? null : roleSaid(worked, text)) ?? roleSaid(plain, text);
}

function roleSaid(plain: string, text: string): Role | null {
  if (plain === "" || plain.length > 80 || isNumeral(text)) return null;
  const says = ([, words]: readonly [Role, Words]) => words.test(plain);
  const role = ROLES.find(says)?.[0] ?? answerRole(plain) ?? MORE_ROLES.find(says)?.[0];
  if (role !== undefined) return role;
  return unitFromHeader(plain) === null ? null : "amount";
}
