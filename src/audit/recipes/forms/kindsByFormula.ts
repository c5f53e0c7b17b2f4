import type { WorkbookSheet } from "../../../workbook/model";
import { textAt } from "../cells";
import type { FinderContext } from "../finderContext";
import { headerRole } from "../headings/headerRole";
import { plainWords } from "../headings/plainWords";
import type { FormKind } from "./formLabels";
import type { LabelledPair, UnsaidPair } from "./labelledPairs";
import { keyOf, rolesByFormula, type ClassRole } from "./rolesByFormula";

const OF_UNIT: readonly (readonly [ClassRole, RegExp])[] = [
  ["molar mass", /^k?g ?[·*]?\/ ?mol$|^k?g ?[·*] ?mol ?(\^?[-−]1|⁻¹)$/],
  ["constant", /^(k|°c) ?[·*]? ?kg ?\/ ?mol$/],
  ["molality", /^mol ?\/ ?kg$/],
  ["moles", /^mol$/],
];

const SAID: ReadonlyMap<FormKind, ClassRole> = new Map<FormKind, ClassRole>([
  ...(["mass", "water", "molar mass", "moles", "particles", "constant"] as const).map(
    (kind) => [kind, kind] as const,
  ),
]);
const ANSWERS: ReadonlyMap<string | null, ClassRole> = new Map<string | null, ClassRole>([
  ...(["molality", "depression", "freezing point"] as const).map((role) => [role, role] as const),
]);

/** What the words of a pair, or the unit beside its values, say that these are. */
function saidRole(sheet: WorkbookSheet, { kind, label, values }: UnsaidPair): ClassRole | null {
  const said = kind === "answer" ? ANSWERS.get(headerRole(label)) : SAID.get(kind ?? "solute");
  if (said !== undefined) return said;
  const last = values.at(-1);
  const unit = last === undefined ? "" : plainWords(textAt(sheet, last.row, last.column + 1));
  return OF_UNIT.find(([, pattern]) => pattern.test(unit))?.[0] ?? null;
}

const kindOf = (role: ClassRole): FormKind => (ANSWERS.has(role) ? "answer" : (role as FormKind));

/** What a pair's values are: at least half of those of which it is known, so that a row of a table is nothing. */
function sharedOf(roles: readonly ClassRole[]): ClassRole | null {
  const times = (role: ClassRole) => roles.filter((one) => one === role).length;
  const most = roles.reduce<ClassRole | null>(
    (best, role) => (best === null || times(role) > times(best) ? role : best),
    null,
  );
  return most === null || 2 * times(most) >= roles.length ? most : null;
}

/** Pairs with what they are: by their words, else by their unit, else by what the formulas do with their values. */
export function kindsByFormula(
  context: FinderContext,
  pairs: readonly UnsaidPair[],
): LabelledPair[] {
  const said = pairs.map((pair) => saidRole(context.sheet, pair));
  const known = new Map<string, ClassRole>();
  for (const [at, { values }] of pairs.entries()) {
    const role = said[at] ?? null;
    if (role === null) continue;
    // The words between a label and its value only explain it: "ΔT | Kf · b · i | 0.4".
    for (const key of values.map(keyOf)) if (!known.has(key)) known.set(key, role);
  }
  const roles = rolesByFormula(context, known);
  return pairs.flatMap((pair, at) => {
    const read = pair.values.flatMap((value) => roles.get(keyOf(value)) ?? []);
    const role = said[at] ?? sharedOf(read);
    const isLoose = pair.kind === null || (pair.kind === "answer" && said[at] === null);
    const kind = isLoose && role !== null ? kindOf(role) : pair.kind;
    return kind === null ? [] : [{ ...pair, kind, role }];
  });
}
