import { cellName } from "../../workbook/address";
import { alcoholByVolume, type ByVolume } from "../alcohol/alcoholByVolume";
import { alcoholSums, type SumByVolume } from "../alcohol/alcoholSums";
import { byMassEdits } from "../alcohol/byMassEdits";
import { componentPer100 } from "../answers/answers";
import { numberEdit } from "../cellEdit";
import type { AuditContext } from "../context";
import { mixEffect, rounded } from "../effect";
import type { Effect, Finding } from "../finding";
import { findingAt } from "../findingAt";
import { misreadingOf } from "../amounts/misreadParts";
import type { Mix } from "../mix";
import type { Rule } from "../rule";
import { statedParts, type StatedPart } from "../answers/statedParts";

const identity = { id: "abv-as-mass", severity: "error" } as const;

const isDrink = (item: string, { ownIngredients }: Mix): boolean =>
  (componentPer100(item, "ethanol", ownIngredients) ?? 0) > 1;

/** In a mix what its freezing point would be with so much more alcohol, else the grams themselves. */
function effectOf(context: AuditContext, { drink, line, stated, right }: ByVolume): Effect | null {
  const unit = line.says === "share" ? "%" : "g";
  const quantity = line.says === "water" ? "water" : "ethanol";
  const plain = { quantity, from: rounded(stated, 2), to: rounded(right, 2), unit };
  const { block, ingredient } = drink;
  const recipe = block?.recipes[0];
  if (block === null || ingredient === null || recipe === undefined || line.says !== "mass")
    return plain;
  const meant = context.mixOf(block, recipe);
  if (meant.items.every((item) => isDrink(item, meant))) return plain; // a list of drinks is no mix
  const extra = Math.max(0, stated - right);
  const mistaken = {
    ...meant,
    items: [...meant.items, "ethanol"],
    grams: [...meant.grams, extra],
  };
  return mixEffect(mistaken, meant) ?? plain;
}

function messageOf(found: ByVolume): string {
  const { drink, line, abvPercent, massPercent, mL, right, stated } = found;
  const name = drink.name === "" ? cellName(found.row, found.column) : drink.name;
  const [abv, mass] = [rounded(abvPercent, 1), rounded(massPercent, 1)];
  if (mL !== null)
    return `The alcohol in ${name} is taken as ${rounded(stated, 1)} g, which are its millilitres: ${rounded(mL, 1)} mL at ${abv} % vol hold ${rounded(right, 1)} g.`;
  if (line.says === "share")
    return `"${line.label}" of ${name} is its strength by volume, ${abv} %: by mass it is ${mass} %.`;
  if (line.says === "water")
    return `The water in ${name} is what its strength by volume, ${abv} %, leaves of its mass: by mass its alcohol is ${mass} %.`;
  return `The alcohol in ${name} is taken as ${abv} % of its mass, but that is its share by volume: ${mass} % by mass.`;
}

function fixOf({ line, right, factor }: ByVolume): string {
  if (line.says === "mass") return `Use ${rounded(right, 2)} g of ethanol.`;
  return line.says === "water"
    ? `Use ${rounded(right, 2)} g.`
    : `Enter ${rounded(right / factor, 2)}.`;
}

const finding = (context: AuditContext, found: ByVolume): Finding =>
  findingAt(identity, found.line.sheet, found, {
    message: messageOf(found),
    effect: effectOf(context, found),
    fix: fixOf(found),
    edits: byMassEdits(found),
  });

/** The alcohol of a recipe, summed up from strengths by volume. */
function partFinding(stated: StatedPart): Finding[] {
  const { sheet, label, value, right, mix, basis, factor } = stated;
  if (misreadingOf(stated) !== "by volume" || right < 0.5) return [];
  const ethanol = basis === "g" ? value : (value * total(mix)) / 100;
  const rightGrams = basis === "g" ? right : (right * total(mix)) / 100;
  const extra = Math.max(0, ethanol - rightGrams);
  const mistaken = { ...mix, items: [...mix.items, "ethanol"], grams: [...mix.grams, extra] };
  return [
    findingAt(identity, sheet, stated, {
      message: `"${label}" takes the strength by volume as a share of the mass: it is ${rounded(value, 1)}, by mass ${rounded(right, 1)}.`,
      effect: mixEffect(mistaken, mix),
      fix: `Enter ${rounded(right / factor, 2)}.`,
      edits: numberEdit(sheet, stated, rounded(right / factor, 4)),
    }),
  ];
}

function sumFinding({ line, row, column, stated, right }: SumByVolume): Finding {
  const [from, to] = [rounded(stated, 1), rounded(right, 1)];
  return findingAt(
    identity,
    line.sheet,
    { row, column },
    {
      message: `"${line.label}" takes the strength by volume as a share of the mass: it is ${from}, by mass ${to}.`,
      effect: { quantity: "ethanol", from, to, unit: line.says === "share" ? "%" : "g" },
      fix: "Turn each strength into a share of the mass first, with RIME.ABVTOMASSFRACTION.",
    },
  );
}

const total = ({ grams }: Mix): number => grams.reduce((sum, one) => sum + one, 0);

export const abvAsMass: Rule = {
  ...identity,
  title: "Alcohol by volume is used as a share of the mass",
  find: (context) => {
    const lines = alcoholByVolume(context).map((found) => finding(context, found));
    const parts = statedParts(context).flatMap(partFinding);
    const sums = alcoholSums(context).map(sumFinding);
    const byCell = new Map<string, Finding>();
    for (const one of [...lines, ...parts, ...sums]) {
      const key = `${one.sheet}!${one.cell}`;
      if (!byCell.has(key)) byCell.set(key, one);
    }
    return [...byCell.values()];
  },
};
