import type { Words } from "../words/words";
import type { FigureLine } from "./figureLine";

/** Why a figure may be believed: source, how it was obtained, what its uncertainty rests on. */
export const whyText = ({ source, obtained, basis }: FigureLine, words: Words): string =>
  [
    source,
    obtained === null ? "" : words.obtained[obtained],
    basis === "" ? "" : words.basis(basis),
  ]
    .filter((part) => part !== "")
    .join(" · ");
