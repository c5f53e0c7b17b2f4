import { remembered } from "../../../foundation/remembered";
import { lowerWords } from "./lowerWords";
import { spelledOut } from "./spelledOut";

const TEXTS_KEPT = 1000;

/** Text as headers and names are compared: the words of a cell in lower case, none of them cut short. */
export const plainWords = remembered(TEXTS_KEPT, (text) => spelledOut(lowerWords(text)));
