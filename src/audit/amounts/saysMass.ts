import type { WorkbookSheet } from "../../workbook/model";
import { looksNumeric, textAt } from "../recipes/cells";
import { nextColumn } from "../recipes/nextFilled";
import { sheetTexts } from "../recipes/sheetTexts";

/** "All amounts in grams", "Grams for 1 pot" anywhere on the sheet is a unit too, unless it heads or labels numbers of its own; "1 kg" is none. */
const SAYS_MASS =
  /(?<!\p{L})(in|all|alle|angaben)(?!\p{L}).{0,20}(?<!\d\s?|\p{L})(g|kg|grams?|gramm|kilograms?|kilogramm|oz|%)(?!\p{L})|^(g|kg|grams?|gramm) (for|per|of|in|für|pro|je|von) (1 )?\p{L}/iu;

const WORD = "(?:grams?|grammes?|gramm|kilos?|kilograms?|kilogramm|ounces?|unzen|pounds?|pfund)";
const UNIT = `(?:${WORD}|g|kg|oz|lbs?)`;
/** What all amounts of a sheet are called. */
const ALL =
  "(?:(?:all|alles?|everything|every|each|the|weights?|amounts?|mass(?:es|en)?|quantit(?:y|ies)|figures?|numbers?|values?|gewichte?|mengen?(?:angaben)?|einwaagen?|zahlen|werte|angaben|recipes?|rezepte?|ingredients?|zutaten)\\s*)";
const CELSIUS =
  "(?:\\s*(?:and|und|&|\\+|,)\\s*(?:°\\s*[cf]|celsius|fahrenheit|degrees?|grad|temperatur\\w*)(?:\\s*c(?:elsius)?)?)?";
/** "Unless I say otherwise", "throughout". */
const BEHIND =
  "(?:\\s*,?\\s*(?:unless|except|if not|where not|außer|sofern|wenn nicht|wo nicht|soweit nicht|throughout|everywhere|always|only|immer|überall|durchweg|durchgehend|for|per|each|für|pro|je)(?!\\p{L}).*)?";
/** A part of a sentence that says nothing but what all is in: "Weights g", "grams", "Grams and °C unless I say otherwise". */
const PART = new RegExp(
  `^(?:${ALL}+[:=]?\\s*(?:(?:is|are|in|as|ist|sind|stehen|wie|=)\\s*)*${UNIT}|${WORD})${CELSIUS}${BEHIND}$`,
  "iu",
);
/** What parts a sentence, or several. */
const BETWEEN = /[.;,/|()[\]·•!]|\s[–—-]\s/;

const isSaidInPart = (text: string): boolean =>
  text.split(BETWEEN).some((part) => PART.test(part.trim()));

const saysOn = (sheet: WorkbookSheet): boolean =>
  [...sheetTexts(sheet).columnsByRow].some(([row, columns]) =>
    columns.some((column) => {
      const text = textAt(sheet, row, column);
      const isOfNumbers =
        looksNumeric(sheet, row, nextColumn(sheet, row, column)) ||
        looksNumeric(sheet, row + 1, column);
      if (/mol\b/i.test(text) || isOfNumbers) return false;
      return SAYS_MASS.test(text) || isSaidInPart(text);
    }),
  );

const known = new WeakMap<WorkbookSheet, boolean>();

/** Whether a sheet says for all of its amounts what they are in. */
export function saysMass(sheet: WorkbookSheet): boolean {
  const says = known.get(sheet) ?? saysOn(sheet);
  known.set(sheet, says);
  return says;
}
