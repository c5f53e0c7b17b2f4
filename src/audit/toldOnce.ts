import type { Finding } from "./finding";

/** Several solutions may share one cell, whose mistake is one. */
export function toldOnce(findings: readonly Finding[]): Finding[] {
  const seen = new Set<string>();
  return findings.filter(({ rule, sheet, cell }) => {
    const key = `${rule}|${sheet}!${cell}`;
    const isNew = !seen.has(key);
    seen.add(key);
    return isNew;
  });
}
