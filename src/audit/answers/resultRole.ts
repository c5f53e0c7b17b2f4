import { remembered } from "../../foundation/remembered";
import { headerRole, type Role } from "../recipes/headings/headerRole";
import { withoutWhen } from "../recipes/names/withoutWhen";
import { answerInWords } from "./answerInWords";
import { saysLaw } from "./saysLaw";

export type ResultRole = Extract<
  Role,
  "freezing point" | "depression" | "molality" | "ice fraction"
>;

const ROLES = new Set<Role | null>(["freezing point", "depression", "molality", "ice fraction"]);

const LABELS_KEPT = 1000;

/** What a label says its answer is; null when it is none of a recipe's. */
export const resultRole = remembered(LABELS_KEPT, (label): ResultRole | null => {
  if (saysLaw(label)) return "depression";
  const role = headerRole(answerInWords(withoutWhen(label)));
  return ROLES.has(role) ? (role as ResultRole) : null;
});
