import { cellName } from "../../workbook/address";
import type { AuditContext } from "../context";
import type { Finding } from "../finding";
import { isLedger } from "../recipes/isLedger";
import { plainWords } from "../recipes/headings/plainWords";
import { isUnexplained } from "./isUnexplained";
import { statedParts } from "./statedParts";

/** Fewer may each be wrong by themselves. */
const LEAST_ANSWERS = 3;

/**
 * Wrong answers of several recipes under one name, where none under that name is right: then the name means something
 * else, or all were worked out the same wrong way, and not each by itself.
 */
export function unfitLabels(context: AuditContext, findings: readonly Finding[]): Finding[][] {
  const byCell = new Map(
    findings.filter(isUnexplained).map((one) => [`${one.sheet}!${one.cell}`, one]),
  );
  if (byCell.size < LEAST_ANSWERS) return [];
  const named = new Map<string, Set<string>>();
  for (const { block, sheet, row, column, label } of [
    ...context.results,
    ...statedParts(context),
  ]) {
    if (isLedger(block)) continue;
    const name = `${sheet.name}!${plainWords(label)}`;
    const cells = named.get(name) ?? new Set();
    named.set(name, cells.add(`${sheet.name}!${cellName(row, column)}`));
  }
  return [...named.values()].flatMap((cells) => {
    const wrong = [...cells].flatMap((cell) => byCell.get(cell) ?? []);
    return wrong.length >= LEAST_ANSWERS && wrong.length === cells.size ? [wrong] : [];
  });
}
