import type { Form, FormSolute } from "./form";
import { bareLabel } from "./formLabels";

/** "molar mass of B", "from 2": the letter or number at the end of words. */
const LETTER = /\s([a-z]|\d)$/;

const letterOf = (label: string): string | undefined => LETTER.exec(bareLabel(label))?.[1];

/** The solute that a label calls by its letter: "moles of A" where "solute A" was named before. */
export function soluteByLetter({ solutes }: Form, label: string): FormSolute | undefined {
  const letter = letterOf(label);
  return letter === undefined
    ? undefined
    : solutes.find(({ named }) => named !== null && letterOf(named.label) === letter);
}
