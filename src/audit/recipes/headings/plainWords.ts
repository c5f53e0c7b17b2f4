import { lowerWords } from "./lowerWords";
import { spelledOut } from "./spelledOut";

/** Text as headers and names are compared: the words of a cell in lower case, none of them cut short. */
export const plainWords = (text: string): string => spelledOut(lowerWords(text));
