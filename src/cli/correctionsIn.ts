import { readFile } from "node:fs/promises";
import type { RecipeCorrection } from "../audit/recipes/corrections/recipeCorrection";
import { badInput } from "../foundation/problem";
import type { Result } from "../foundation/result";

/** The corrections in a file, none without one. */
export async function correctionsIn(
  file: string | null,
): Promise<Result<readonly RecipeCorrection[]>> {
  if (file === null) return [];
  let content: unknown;
  try {
    content = JSON.parse(await readFile(file, "utf8"));
  } catch (mishap) {
    const why = mishap instanceof SyntaxError ? "is not JSON" : "cannot be read";
    return badInput(`The file of corrections "${file}" ${why}.`);
  }
  const { readCorrections } = await import("../audit/recipes/corrections/readCorrections");
  return readCorrections(content);
}
