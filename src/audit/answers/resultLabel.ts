import type { WorkbookCell } from "../../workbook/model";
import { plainWords } from "../recipes/headings/plainWords";
import { answerInWords } from "./answerInWords";
import { MIX_NOUNS } from "../recipes/roles/mixNouns";

export type ResultUnit = "°C" | "°F" | "K" | "mol/kg" | "fraction" | "%";

const CELSIUS = /([-−–]?\s?\d+(?:[.,]\d+)?)\s*(?:[°º˚]|deg(?:rees?)?\b\.?|grad\b)\s*(c|f)/i;
/** "At -9 C": the letter alone, where nothing else is meant by it. */
const LETTER_ONLY = /(?:(?:\bat|\bbei|@)\s*|(?=[-−–]))([-−–]?\s?\d+(?:[.,]\d+)?)\s*(c|f)\b/i;

/** "Ice at -12": less than nothing without a unit. */
const BARE_COLD = /(?:\b(?:at|bei)|@)\s*([-−–]\d+(?:[.,]\d+)?)(?!\d|[.,]\d|\s*(?:%|[fk]\b))/i;

export const fahrenheitToC = (temperatureF: number): number => ((temperatureF - 32) * 5) / 9;

/** "Ice at −14 °C" → −14; null when the label names no temperature. */
export function labelledTemperatureC(label: string): number | null {
  const [, digits, scale] =
    CELSIUS.exec(label) ?? LETTER_ONLY.exec(label) ?? BARE_COLD.exec(label) ?? [];
  if (digits === undefined) return null;
  const number = Number(digits.replace(/[−–]/, "-").replace(/\s/g, "").replace(",", "."));
  return scale?.toLowerCase() === "f" ? fahrenheitToC(number) : number;
}

/** The unit of a labelled answer from its label, the cell to its right and its number format. */
export function resultUnit(
  label: string,
  beside: string,
  cell: WorkbookCell,
  role: string,
): ResultUnit {
  const plain = plainWords(label);
  const format = cell.format ?? "";
  if (role === "molality") return "mol/kg";
  if (role === "ice fraction") {
    if (/%/.test(format)) return "fraction";
    const inPercent = /%|percent|prozent/.test(plain) || beside === "%";
    const large = typeof cell.value === "number" && Math.abs(cell.value) > 1;
    return inPercent || large ? "%" : "fraction";
  }
  if (/°\s?f|fahrenheit/.test(`${plain} ${beside.toLowerCase()} ${format.toLowerCase()}`))
    return "°F";
  return role === "depression" ? "K" : "°C";
}

/** What is eaten of a mix is a mix like it. */
const HELPING =
  "spoon(ful)?s?|scoops?|loll(y|ies)|portion(s|en)?|helpings?|servings?|balls?|kugeln?|löffels?|stiele?s?";
const MIX = `(${MIX_NOUNS}|${HELPING}|ganzen?(?! (wasser|water)))`;
const FILLER =
  "((the|its|a|one|our|all|whole|total|finished|frozen|der|des|dem|den|einem|einer|ganzen|gesamten|fertigen|vom|von) )*";
const OF = "(of|in|by|per|der|des|vom|von|am|im|an|auf|auf die|%|100 g)";
const OF_WATER = new RegExp(
  `\\b${OF} ${FILLER}(gesamt)?(water|wassers?)\\b|water,? (that |which )?((is|has|had|will be|still|already|then|now|turned|gone|become|made) )*(frozen|((in)?to |as )?ice)|(frozen|ice|(aus)?gefr(oren(e[rsmn]?)?|\\.)) (water|wasser)|(water|wasser(anteil)?),? (that|which|of (it|this|which)|das|der|davon|hiervon)\\b.{0,30}\\b(ice|frozen|freezes|eis|gefriert|(aus)?gefr(oren)?\\b)|wasser,? ((ist|noch|schon|bereits|dann|jetzt) )*(gefroren|ausgefroren|zu eis|als eis)|\\b(water|wasser) (at|in|on|inside|by|under|im|am|bei|beim|auf|unter) (?:\\S+ ){1,6}?(frozen|(?:aus)?gefroren|(?:in)?to ice|as ice|zu eis|als eis)\\b|ausfriergrad|\\b(ice|eis) ?\\/ ?(water|wasser)`,
);
const OF_MIX = new RegExp(
  `(?:^|\\b|%|100 g )${OF} ?${FILLER}${MIX}\\b|\\b(of|in) (the )?(whole|total)\\b(?! (of the )?water)|\\b((of|in) (everything|all(?! (of )?(the |its |this |that )?wa(?:t|ss)er)|all of it|it all|the whole (thing|lot))|von (allem|dem ganzen))\\b(?! (the )?wa(?:t|ss)er)|^(the |our |die |der )?${MIX_NOUNS},? ((that|which|is|has|will be|turned|gone|become|the|die|das|der|ist|noch|schon) )*(frozen|((in)?to |as )?ice|gefroren|zu eis|als eis)\\b|gesamt(masse|gewicht|menge)|% vom mix|(per|je|pro|in) 100 g(?! (of )?(the )?wa(?:t|ss)er)`,
);

/** "% of the pudding", "% der Torte": what is no water is the whole of what is frozen. */
const OF_THING =
  /(%|per ?cent|prozent) (of|der|des|vom) (the |our |this |its )?(?!(the|our|this|its|total|all)\b|ice\b|eis(es)?\b|liquid|flüssig|\p{L}*(water|wasser|sugar|zucker|solid|syrup|sirup))\p{L}{3,}/u;

/** "Ausgefroren (v. Wasser)", "% v. d. Masse": von, as it is cut short. */
const OF_SHORT = /(?<!\p{L})v\. ?(?=\p{L}{3}|d\.)/gu;

/** The share of what a label promises, or null when it does not say. */
export function labelledBasis(label: string): "water" | "mix" | null {
  const plain = plainWords(answerInWords(label)).replace(OF_SHORT, "von ");
  const [water, mix] = [OF_WATER.exec(plain), OF_MIX.exec(plain)];
  if (mix === null && water === null) return OF_THING.test(plain) ? "mix" : null;
  if (mix === null || water === null) return water !== null ? "water" : mix !== null ? "mix" : null;
  // "Frozen water, % of the mix": the last word tells.
  return mix.index > water.index ? "mix" : "water";
}
