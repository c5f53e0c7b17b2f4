/** The allergens that food law names, as labels write them. @source eu1169_2011 */
const NAME =
  /^((contains?|enthält|may contain|spuren von) )?(cow'?s? ?milk|milk|(kuh)?milch|eggs?|ei(er)?|(tree ?|pea)?nuts?|(erd)?nüsse|schalenfrüchte|gluten|wheat|weizen|barley|gerste|rye|roggen|oats|hafer|sul[fp]hites?|sulfite?|soy(a|beans?)?|soja(bohnen)?|sesame?|sesam|fish|fische?|celery|sellerie|mustard|senf|lupins?|lupinen?|crustaceans|krebstiere|molluscs|weichtiere)$/;

const IN_BRACKETS = /\([^)]*\)/g;

/** Whether a text begins with nothing but allergens: "milk, tree nuts (walnuts); honey: not for infants". */
export function isAllergenList(text: string): boolean {
  const [first = ""] = text.toLowerCase().replaceAll(IN_BRACKETS, " ").split(/[;.]/);
  const parts = first.split(/[,/&+]|\b(?:and|und)\b/).map((part) => part.trim());
  return parts.every((part) => NAME.test(part));
}

/** Whether a list of allergens is a lone word, which may be an ingredient as well: "milk". */
export const isOneWord = (text: string): boolean => /^[\p{L}]+$/u.test(text.trim());
