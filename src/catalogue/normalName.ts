import { remembered } from "../foundation/remembered";

const NAMES_KEPT = 5000;

/** The form in which names are compared: compatibility form, lower case, single spaces, one kind of dash, ss for ß. */
export const normalName = remembered(NAMES_KEPT, (name) =>
  name
    .normalize("NFKC")
    .toLowerCase()
    .replace(/[\u2010-\u2015\u2212]/g, "-")
    .replace(/[\u2018\u2019]/g, "'")
    .replaceAll("ß", "ss") // in capitals, and in Switzerland, there is none
    .replace(/\s+/g, " ")
    .replace(/ %/g, "%")
    .trim(),
);
