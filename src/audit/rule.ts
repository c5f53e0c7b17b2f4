import type { AuditContext } from "./context";
import type { Finding, Severity } from "./finding";

/** One thing that goes wrong in recipe sheets, and how it is found. */
export interface Rule {
  readonly id: string;
  readonly severity: Severity;
  readonly title: string;
  readonly find: (context: AuditContext) => Finding[];
}
