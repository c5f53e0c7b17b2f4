import type { Matrix } from "../foundation/cell";
import type { Result } from "../foundation/result";
import type { Target } from "../recipe/checkTarget";
import { readTargets } from "../recipe/readTargets";

/** The serving targets of a range led by headers, row by row below them: as RIME.CHECK takes each, or why it refuses it. */
export const ownTargetRows = (range: Matrix): readonly Result<Target>[] =>
  readTargets("target", range).cells;
