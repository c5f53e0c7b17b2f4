import * as z from "zod/mini";
import { badInput, isProblem } from "../../../foundation/problem";
import type { Result } from "../../../foundation/result";
import type { RecipeCorrection } from "./recipeCorrection";
import { statedRecipe } from "./statedRecipe";

const LONGEST = 2000;
const MOST = 10_000;

const text = z.string().check(z.minLength(1), z.maxLength(LONGEST));
const mayBeBlank = z.optional(z.string().check(z.maxLength(LONGEST)));

const corrections = z
  .array(
    z.strictObject({
      sheet: text,
      range: text,
      recipe: z.enum(["down", "across", "none"]),
      names: mayBeBlank,
      amounts: mayBeBlank,
      unit: mayBeBlank,
      heading: mayBeBlank,
    }),
  )
  .check(z.maxLength(MOST));

const SHAPE = `[{"sheet": "Ices", "range": "A1:C9", "recipe": "down", "across" or "none", "names": "A", "amounts": "C", "unit": "g"}]`;

/** Checks what was read from a file or a sheet; a Problem in one sentence names the first entry that is wrong. */
export function readCorrections(content: unknown): Result<readonly RecipeCorrection[]> {
  const checked = corrections.safeParse(content);
  if (!checked.success) {
    const path = checked.error.issues[0]?.path ?? [];
    const [at, field] = [path[0], path[1]];
    const where =
      typeof at !== "number"
        ? ""
        : `; entry ${at + 1} is not${field === undefined ? "" : `, by its "${String(field)}"`}`;
    return badInput(`Corrections are of the shape ${SHAPE}, the last three if need be${where}.`);
  }
  const contradiction = checked.data.map(statedRecipe).find(isProblem);
  return contradiction ?? checked.data;
}
