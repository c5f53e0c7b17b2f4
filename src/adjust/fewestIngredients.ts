import { isProblem } from "../foundation/problem";
import type { AdjustWish } from "./adjustment";
import { aimValue } from "./programme";
import type { AdjustLine } from "./readQuestion";
import { asksBelowTheEnd, solveWishes, type Solved } from "./solveWishes";

/** With more than so many changed ingredients "few" is no longer the word. */
const MOST_CHANGED = 3;
/** So many choices of ingredients are tried at most, so that a long recipe does not keep anyone waiting. */
const MOST_TRIALS = 120;

const mayMove = ({ fromGrams, toGrams, grams }: AdjustLine): boolean =>
  fromGrams < grams || toGrams > grams;

function* choices(places: readonly number[], count: number): Generator<readonly number[]> {
  if (count === 0) yield [];
  for (const [index, first] of places.entries()) {
    if (count === 0) return;
    for (const rest of choices(places.slice(index + 1), count - 1)) yield [first, ...rest];
  }
}

/**
 * The way that touches the fewest ingredients, and of those tried the smallest change; null when it is no fewer
 * than in the solution at hand.
 */
export function fewestIngredients(
  lines: readonly AdjustLine[],
  wishes: readonly AdjustWish[],
  smallest: readonly number[],
): Solved {
  if (asksBelowTheEnd(lines, wishes)) return null; // each trial is a search of its own there
  const touched = lines.filter(
    (line, at) => Math.abs((smallest[at] ?? 0) - line.grams) > 1e-6 * line.scaleGrams,
  ).length;
  // Outside its range now: it has to move in any case.
  const must = [...lines.keys()].filter((at) => {
    const line = lines[at];
    return line !== undefined && (line.grams < line.fromGrams || line.grams > line.toGrams);
  });
  const places = [...lines.keys()].filter((at) => {
    const line = lines[at];
    return line !== undefined && mayMove(line) && !must.includes(at);
  });
  let trials = 0;
  for (let count = 0; count + must.length < Math.min(touched, MOST_CHANGED + 1); count += 1) {
    let best: readonly number[] | null = null;
    for (const chosen of choices(places, count)) {
      trials += 1;
      if (trials > MOST_TRIALS) return best;
      const free = [...must, ...chosen];
      const found = solveWishes(
        lines.map((line, at) =>
          free.includes(at) ? line : { ...line, fromGrams: line.grams, toGrams: line.grams },
        ),
        wishes,
      );
      if (found === null || isProblem(found)) continue;
      if (best === null || aimValue(lines, "change", found) < aimValue(lines, "change", best))
        best = found;
    }
    if (best !== null) return best;
  }
  return null;
}
