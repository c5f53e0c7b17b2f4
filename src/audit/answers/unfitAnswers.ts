import type { AuditContext } from "../context";
import { rounded } from "../effect";
import type { Finding } from "../finding";
import { unfitGroups } from "./unfitGroups";
import { unfitLabels } from "./unfitLabels";

/** How several wrong answers are told as one. */
interface Told {
  readonly whose: string;
  readonly fix: string;
}

const OF_LIST: Told = {
  whose: "answers here fits the list",
  fix: "Look at what was read as the recipe, then at its amounts.",
};
const OF_NAME: Told = {
  whose: "answers of this name fits its list",
  fix: "Look at what the name means, and of how much, then at how the numbers were worked out.",
};

function asOne([first, ...others]: readonly Finding[], { whose, fix }: Told): Finding[] {
  if (first === undefined) return [];
  const { rule, sheet, cell, message, effect } = first;
  return [
    {
      ...{ rule, sheet, cell, effect, severity: "warning" as const, fix },
      message: `None of the ${rounded(others.length + 1, 0)} ${whose}: ${message}`,
    },
  ];
}

const without = (findings: readonly Finding[], gone: readonly Finding[]): Finding[] => {
  const told = new Set(gone);
  return findings.filter((finding) => !told.has(finding));
};

/** Wrong answers where none of several of a list, or of one name, is right, told as one that may come from a wrong reading. */
export function unfitAnswersAsOne(
  context: AuditContext,
  findings: readonly Finding[],
): readonly Finding[] {
  const lists = unfitGroups(context, findings).map((group) => group.findings);
  const others = without(findings, lists.flat());
  const names = unfitLabels(context, others);
  return [
    ...without(others, names.flat()),
    ...lists.flatMap((one) => asOne(one, OF_LIST)),
    ...names.flatMap((one) => asOne(one, OF_NAME)),
  ];
}
