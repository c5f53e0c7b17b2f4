import { isProblem } from "../foundation/problem";
import type { Result } from "../foundation/result";
import type { Mix } from "./mix";
import { solutionOf } from "./solution";
import { textureLines } from "./textureLines";
import { freezingLines } from "./workingFreezing";
import { iceLines } from "./workingIce";
import type { WorkingLine } from "./workingLine";
import { idealLines, solutionLines } from "./workingSolution";

/** The calculation of a mix as one would write it on a board, for a temperature too when one is given. */
export function workingOf(mix: Mix, temperatureC: number | null): Result<readonly WorkingLine[]> {
  const solution = solutionOf(mix);
  if (isProblem(solution)) return solution;
  return [
    ...solutionLines(mix),
    ...idealLines(mix),
    ...freezingLines(mix),
    ...(temperatureC === null
      ? []
      : [...iceLines(mix, temperatureC), ...textureLines(mix, temperatureC)]),
  ];
}
