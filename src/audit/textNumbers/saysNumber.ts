import { headerRole, type Role } from "../recipes/headings/headerRole";
import { plainWords } from "../recipes/headings/plainWords";
import { unitFromHeader } from "../recipes/amounts/unit";

const NUMERIC_ROLES = new Set<Role | null>([
  ...(["price", "temperature", "molar mass", "moles", "particles", "molality", "abv"] as const),
  ...(["ethanol", "freezing point", "depression", "ice fraction", "cryoscopic constant"] as const),
  ...(["composition", "measured", "amount", "total"] as const),
]);
const NUMERIC =
  /%|°|per ?cent|prozent|yield|ausbeute|\bshare\b|anteil|fraction|factor|faktor|margin|marge|\bloss\b|verlust|schwund|brix|\bph\b|density|dichte|pieces|stück|\bbars\b|riegel|portions?\b|volume|volumen|overrun|[([](min|h|s|ml|l|cm|mm|kcal|kj)[)\]]/;
/** What names, dates and numbers these have, not how much of something. */
const NAMES_THINGS =
  /\b(no|nr|nummer|number|code|codes|sku|ean|gtin|id|ref|reference|art|article|artikel|artikelnummer|batch|lot|los|charge|date|datum|day|tag|week|woche|kw|year|jahr|month|monat|time|uhrzeit|zeit|phone|telephone|telefon|tel|fax|mobile|zip|plz|postcode|version|rev|page|seite|room|raum|shelf|regal|notes?|notiz|bemerkung(en)?|comments?|remarks?|source|quelle|customer|kunde|step|schritt|supplier|lieferant|allergene?s?|what|name|title)\b\.?|#|nummer\b|chargen/;

export type Says = "a number" | "a name" | "nothing known";

/** Whether a heading or label asks for a number, for the number or date that a thing has, or does not tell. */
export function saysOf(label: string): Says {
  const plain = plainWords(label);
  if (plain === "") return "nothing known";
  const role = headerRole(label);
  if (
    NAMES_THINGS.test(plain) &&
    (role === null || role === "other" || role === "name" || role === "amount")
  )
    return unitFromHeader(plain) === null ? "a name" : "a number";
  return NUMERIC_ROLES.has(role) || NUMERIC.test(plain) || unitFromHeader(plain) !== null
    ? "a number"
    : "nothing known";
}
