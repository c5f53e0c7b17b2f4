import { partsThatDiffer } from "../amounts/partsThatDiffer";
import type { AuditContext } from "../context";
import type { Finding } from "../finding";
import { judgeResults, RESULT } from "./judgeResults";

const known = new WeakMap<AuditContext, readonly Finding[]>();

/** The answers and parts that are not what their recipe gives, one by one; compared once. */
export function resultsThatDiffer(context: AuditContext): readonly Finding[] {
  const found = known.get(context) ?? [
    ...judgeResults(context).filter(({ rule }) => rule === RESULT.id),
    ...partsThatDiffer(context),
  ];
  known.set(context, found);
  return found;
}
