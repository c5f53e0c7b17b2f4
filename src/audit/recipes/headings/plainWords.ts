import { cleanText } from "./cleanText";

/** Text as headers and names are compared: the words of a cell in lower case. */
export const plainWords = (text: string): string => cleanText(text.normalize("NFKC").toLowerCase());
