import { isWordOf } from "./isWordOf";
import type { KnownMatch } from "./itemMatch";
import { nameWords } from "./nameWords";
import { meltedWords, pieceWords } from "./preparationWords";

const isMelted = isWordOf(meltedWords);
const isInPieces = isWordOf(pieceWords);
const MELTED = /\((melted in|blended)\)$/;
const IN_PIECES = /\(pieces\)$/;

/** Which of the choices a name means that says "melted" or "chopped": chopped and melted is melted. */
export function ofState(
  name: string,
  match: KnownMatch,
  known: (name: string) => KnownMatch | undefined,
): KnownMatch {
  if (match.kind !== "ambiguous") return match;
  const words = nameWords(name);
  const state = words.some(isMelted) ? MELTED : IN_PIECES;
  if (state === IN_PIECES && !words.some(isInPieces)) return match;
  const choices = match.choices.filter((choice) => state.test(choice));
  const [first] = choices;
  if (first === undefined) return match;
  return choices.length > 1 ? { ...match, choices } : (known(first) ?? match);
}
