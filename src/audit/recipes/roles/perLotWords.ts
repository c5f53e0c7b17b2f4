import { unitFromHeader } from "../amounts/unit";
import type { Words } from "./words";

/** "For 2 kg of mix", "je Liter Masse": how much of the whole the amounts make. */
const FOR_MIX =
  /^((k?g|grams?|gramm|amount|quantity|menge) )?(per|pro|je|for|für|auf) ((\d+([.,]\d+)? ?)?(kg|kilo|1000 ?g|l|liter|litre)s?\b.*(mix|mischung|masse|batch|ansatz|base|recipe|rezept)|(the |one |a |den |einen )?(batch|mix|recipe|ansatz|charge|rezept|mischung)$)/;
/** "Per mould (g)", "kg je Blech", "g each group", "für 10 Stück in g": for how many the amounts are. */
const PER_ONE =
  /^(?:(?:k?g|grams?|gramm|amount|quantity|mass|weight|menge|masse|gewicht|weigh(?: out| in)?|measure(?: out)?|needed|(?:ab|ein|aus)wiegen|benötigt),? )?(?:(?:per|pro|je|each|every|jede[rsnm]?) (?:\d+ )?|(?:for|für) \d+ )([\p{L}-]+)/u;
/** The weight of one piece is none of a recipe's amounts. */
const OF_PIECE = /^(weight|mass|gewicht|masse)\b.*\b(piece|stück|egg|ei)\b/;
/** What a number is per that is no recipe: units, times, packs, the ingredient itself. */
const NO_LOT =
  /^(k?g|mg|kilos?|grams?|gramm|m?l|lit(er|re)s?|mol|lb|oz|pounds?|cups?|tbsp|tsp|cents?|prozent|day|week|month|year|hour|h|minute|tag|woche|monat|jahr|stunde|pack\p{L}*|packung|gebinde|bag|sack|carton|karton|case|box|kiste|flasche|bottle|can|dose|ingredient|zutat|item|unit|einheit|piece|egg|ei)$/u;

const isPerOne: Words = {
  test: (plain) => {
    const [, lot] = PER_ONE.exec(plain) ?? [];
    if (lot === undefined || NO_LOT.test(lot) || OF_PIECE.test(plain)) return false;
    const unit = unitFromHeader(plain);
    return unit === "g" || unit === "kg";
  },
};

/** Headings of amounts that say for how much or how many they are. Common practice, no source. */
export const perLotWords: Words = {
  test: (plain) => FOR_MIX.test(plain) || isPerOne.test(plain),
};
