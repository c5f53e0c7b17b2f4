import { frozenInWords } from "./frozenInWords";
import { quotientInWords } from "./quotientInWords";

/** A label as the words of answers are known: what is shown by a sign or told by its feel, said. */
export const answerInWords = (label: string): string => quotientInWords(frozenInWords(label));
