import { componentGrams } from "../answers";
import { numberEdit } from "../cellEdit";
import type { AuditContext } from "../context";
import { rounded } from "../effect";
import type { Finding } from "../finding";
import { findingAt } from "../findingAt";
import type { Mix } from "../mix";
import { textAt } from "../recipes/cells";
import { plainWords } from "../recipes/plainWords";
import { sheetTexts } from "../recipes/sheetTexts";
import type { Rule } from "../rule";

const identity = { id: "per-water-or-per-mix", severity: "error" } as const;

const PER_WATER = /(g|gramm) ?(\/|per|pro|je|auf) ?100 ?g ?(of )?(water|wasser)/;
const PER_MIX =
  /\b(mass|wt|weight)[ -]?%|% (by|of the) (mass|mix)|\bw\/w\b|masse-?%|massenprozent|(g|gramm) ?(\/|per|pro|je) ?100 ?g ?(of )?(mix|mischung)/;
const OF_SUGAR = /sugar|sucrose|zucker|saccharose/;

interface Readings {
  readonly perWater: number;
  readonly perMix: number;
}

function readingsOf(mix: Mix): Readings | null {
  const sugars = componentGrams(mix, "sugars");
  const water = componentGrams(mix, "water");
  const total = mix.grams.reduce((sum, grams) => sum + grams, 0);
  if (sugars === null || water === null || sugars <= 0 || water <= 0) return null;
  return { perWater: (100 * sugars) / water, perMix: (100 * sugars) / total };
}

const near = (one: number, other: number) => Math.abs(one / other - 1) < 0.01;

function findAll(context: AuditContext): Finding[] {
  return context.workbook.sheets.flatMap((sheet) => {
    const blocks = context.blocks.filter((block) => block.sheet === sheet);
    const [block] = blocks;
    const [recipe] = block?.recipes ?? [];
    if (blocks.length !== 1 || block?.recipes.length !== 1 || recipe === undefined) return [];
    return [...sheetTexts(sheet).columnsByRow].flatMap(([row, columns]) =>
      columns.flatMap((column): Finding[] => {
        const label = textAt(sheet, row, column);
        const plain = plainWords(label);
        const value = sheet.cellAt(row, column + 1)?.value;
        const [perWater, perMix] = [PER_WATER.test(plain), PER_MIX.test(plain)];
        if (typeof value !== "number" || perWater === perMix || !OF_SUGAR.test(plain)) return [];
        const readings = readingsOf(context.mixOf(block, recipe));
        if (readings === null) return [];
        const [own, other] = perWater
          ? [readings.perWater, readings.perMix]
          : [readings.perMix, readings.perWater];
        if (near(value, own) || !near(value, other)) return [];
        const [says, is] = perWater
          ? ["100 g of water", "100 g of mix"]
          : ["100 g of mix", "100 g of water"];
        return [
          findingAt(
            identity,
            sheet,
            { row, column: column + 1 },
            {
              message: `"${label}" is ${rounded(value, 2)}, which is per ${is}; per ${says} it is ${rounded(own, 2)}.`,
              effect: {
                quantity: `sugar per ${says}`,
                from: rounded(value, 2),
                to: rounded(own, 2),
                unit: perWater ? "g" : "%",
              },
              fix: `Enter ${rounded(own, 2)}, or change the label.`,
              edits: numberEdit(sheet, { row, column: column + 1 }, rounded(own, 2)),
            },
          ),
        ];
      }),
    );
  });
}

export const perWaterOrMix: Rule = {
  ...identity,
  title: "Per 100 g of water and per cent of the mix are mixed up",
  find: findAll,
};
