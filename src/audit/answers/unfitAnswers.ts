import type { AuditContext } from "../context";
import { rounded } from "../effect";
import type { Finding } from "../finding";
import { unfitGroups } from "./unfitGroups";

function asOne([first, ...others]: readonly Finding[]): Finding[] {
  if (first === undefined) return [];
  const { rule, sheet, cell, message, effect } = first;
  return [
    {
      ...{ rule, sheet, cell, effect, severity: "warning" as const },
      message: `None of the ${rounded(others.length + 1, 0)} answers here fits the list: ${message}`,
      fix: "Look at what was read as the recipe, then at its amounts.",
    },
  ];
}

/** Wrong answers where none of several is right, told as one that may come from a wrong reading. */
export function unfitAnswersAsOne(
  context: AuditContext,
  findings: readonly Finding[],
): readonly Finding[] {
  const unfit = unfitGroups(context, findings).map((group) => group.findings);
  const gone = new Set(unfit.flat());
  return [...findings.filter((finding) => !gone.has(finding)), ...unfit.flatMap(asOne)];
}
