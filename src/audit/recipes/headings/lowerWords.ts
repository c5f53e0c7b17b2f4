import { cleanText } from "./cleanText";

/** The words of a cell in lower case, as they are typed otherwise. */
export const lowerWords = (text: string): string => cleanText(text.normalize("NFKC").toLowerCase());
