import { isAllergenList } from "./allergenList";

/** "⚠ milk", "Achtung Milch", "NB egg": said to be minded. */
const MINDED =
  /^\W*(⚠️?|❗|!(?=\W*\p{L})|(achtung|vorsicht|careful|watch( out)?(?=:)|nb|warning|warnung|beware( of)?|caution|hinweis|note|pflicht(hinweis|angabe)|there('s| is)|(da|hier|es) (ist|sind)|not vegan|nicht vegan|of the 14|von den 14)\b)[:,!]?\s*/iu;
/** "Milk in this one", "Milch drin", "Milk: yes", "Milk!": that it is in it. */
const IN_IT =
  /(\s*!+|:?\s*(yes|ja|✓|✔|☑)|\s+(is |are |ist |sind )?(in (it|this( one)?|here|them)|(da |hier )?(drin(nen)?|darin|dabei|enthalten|mit drin)|im eis|present|included|inside|always|throughout|immer|überall|in (all|both|each|every|any|alle[nmr]?|beiden|jede[mrn]?)( (of (it|them|these|those)|(the |der |die |den )?[\p{L}\d]+))?))\s*!*\s*$/iu;

/** Which nuts they are has to be said (EU 1169/2011, annex II); here they are nuts. */
const NUTS =
  /\b(hazelnuts?|walnuts?|almonds?|pistachios?|pecans?|cashews?|haseln(ü|u)sse?|waln(ü|u)sse?|mandeln?|pistazien?|nuss)(?!\p{L})/giu;

const isListOfThose = (said: string): boolean => {
  const bare = said.replace(MINDED, "").replace(IN_IT, "").trim();
  return bare !== said && bare !== "" && isAllergenList(bare.replaceAll(NUTS, "nuts"));
};

/** Whether the first sentence of a text says of nothing but allergens that they are to be minded or in it. */
export function saysInIt(text: string): boolean {
  const [first = ""] = text.split(/[.;](?:\s|$)|(?<=\p{L}!+)\s+/u);
  return [first, first.replaceAll(/[()]/g, " ")].some((said) =>
    isListOfThose(said.replaceAll(/\s+/g, " ").trim()),
  );
}
