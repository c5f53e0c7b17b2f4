import type { Finding } from "./finding";

/** One cell may name what several solutions have in it: the same sentence about it is said once. */
export function saidOnce(findings: readonly Finding[]): Finding[] {
  const seen = new Set<string>();
  return findings.filter(({ sheet, cell, message }) => {
    const key = `${sheet}!${cell} ${message}`;
    const isNew = !seen.has(key);
    seen.add(key);
    return isNew;
  });
}
