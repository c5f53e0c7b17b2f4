import { callFunction } from "../../worksheet/callFunction";
import { unfitRecipes } from "../answers/unfitRecipes";
import { column, iceFraction, numberFrom } from "../answers/answers";
import type { AuditContext } from "../context";
import { rounded } from "../effect";
import type { Effect, Finding } from "../finding";
import { findingAt } from "../findingAt";
import { leastChange } from "../amounts/leastChange";
import type { Mix } from "../mix";
import { namedTargets, type NamedTarget } from "../targets/namedTargets";
import type { Rule } from "../rule";
import { titleOf } from "../solutions/solubility";
import type { WantedIce } from "../temperatures/wantedIce";

const identity = { id: "misses-its-target", severity: "error" } as const;

/** In a ledger only the first misses are told how to be mended. */
const MOST_MENDED = 40;

/** Whether a mix is outside the target's band by less than its ice share is known to. */
function isWithinUncertainty(
  mix: Mix,
  { temperatureC, iceFrom, iceTo, basis }: WantedIce,
): boolean {
  const ice = iceFraction(mix, temperatureC, basis);
  const known = numberFrom(
    "UNCERTAINTY",
    column(mix.items),
    column(mix.grams),
    "ice fraction",
    temperatureC,
    mix.ownIngredients,
  );
  if (ice === null || known === null) return false;
  return ice > iceFrom - known && ice < iceTo + known;
}

/** How far the ice share is outside the target's band, in percent of the basis. */
function effectOf(mix: Mix, { temperatureC, iceFrom, iceTo, basis }: WantedIce): Effect | null {
  const ice = iceFraction(mix, temperatureC, basis);
  if (ice === null) return null;
  const bound = ice > iceTo ? iceTo : iceFrom;
  return {
    quantity: `share of the ${basis} that is ice at ${String(temperatureC).replace("-", "−")} °C`,
    from: rounded(100 * ice, 1),
    to: rounded(100 * bound, 1),
    unit: "%",
  };
}

function fixOf(mix: Mix, wanted: WantedIce): string | undefined {
  const change = leastChange(mix, wanted);
  if (change === null) return undefined;
  const { item, fromGrams, toGrams } = change;
  const [word, by] = [toGrams > fromGrams ? "more" : "less", Math.abs(toGrams - fromGrams)];
  return `${item} moves it with the fewest grams: ${rounded(toGrams, 1)} g instead of ${rounded(fromGrams, 1)} g (${rounded(by, 1)} g ${word}) just meets it.`;
}

function finding(
  context: AuditContext,
  named: NamedTarget,
  mended: { count: number },
): Finding | null {
  const { sheet, block, recipe, place, name, wanted, asked } = named;
  const mix = context.mixOf(block, recipe);
  if (!mix.complete || mix.items.length === 0) return null;
  const verdict = callFunction(
    "CHECK",
    column(mix.items),
    column(mix.grams),
    asked,
    mix.ownIngredients,
  )[0]?.[0];
  if (typeof verdict !== "string" || verdict.startsWith("meets")) return null;
  mended.count += 1;
  const fix = mended.count > MOST_MENDED ? undefined : fixOf(mix, wanted);
  const isClose = isWithinUncertainty(mix, wanted);
  const rule = isClose ? { ...identity, severity: "note" as const } : identity;
  const close = isClose ? " by less than it is known to" : "";
  return findingAt(rule, sheet, place, {
    message: `${titleOf(recipe)} misses "${name}"${close}: ${verdict}.`,
    effect: effectOf(mix, wanted),
    ...(fix !== undefined && { fix }),
  });
}

export const missesTarget: Rule = {
  ...identity,
  title: "The mix misses the serving-temperature target named beside it",
  find: (context) => {
    const mended = { count: 0 };
    const unfit = unfitRecipes(context);
    return context.blocks.flatMap((block) =>
      namedTargets(context, block)
        .filter(({ recipe }) => !unfit.has(recipe))
        .flatMap((named) => finding(context, named, mended) ?? []),
    );
  },
};
