import { chemicalName } from "../names/chemicalName";
import type { FinderContext } from "../finderContext";

const OF_SOMETHING = /^.*?\b(?:of|von|an|der|des)\s+(?:the\s+)?(.+)$/i;
const UNIT = /\s*[([]\s*(in )?(k?g|m?l|k?g ?[·*]?\/ ?mol|k?mol)\s*[)\]]\s*$/i;
const USED =
  /\s+(dissolved|used|added|taken|weighed( (in|out))?|poured in|stirred in|gelöst|zugegeben|verwendet|eingewogen|abgewogen|darin|drin|in (it|the [a-z]+|each|de[mr] [a-zäöüß]+))$/i;

/** The substance that a label itself names: "Mass of sodium chloride (g)", "m(NaCl) / g". */
export function itemInLabel(label: string, { check }: FinderContext): string | null {
  const bare = label
    .replace(/\s*[=:]\s*$/, "")
    .replace(UNIT, "")
    .replace(/\s*\/\s*[^\s()]+$/, "");
  const short = bare.replace(USED, "").trim();
  const candidates = [short, OF_SOMETHING.exec(short)?.[1]];
  for (const text of candidates) {
    const item = text === undefined ? null : chemicalName(text.trim(), check);
    if (item !== null) return item;
  }
  return null;
}
