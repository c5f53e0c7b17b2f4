import { put, putRow, shown, type Content, type CorpusSheet, type Spot } from "../book";
import type { Voice } from "../caterers/words";
import type { Kit } from "../kit";
import type { Place } from "../layouts/parts";

/** What they call their ingredients in Austria. */
export const AUSTRIAN: Readonly<Record<string, string>> = {
  ...{ "Sahne 35 %": "Schlagobers 35 %", Eigelb: "Dotter", Zucker: "Feinkristallzucker" },
  ...{ Vollmilch: "Vollmilch 3,5 %", Wasser: "Leitungswasser", Walnüsse: "Walnusskerne" },
};

/** What they call them in Switzerland. */
export const SWISS: Readonly<Record<string, string>> = {
  ...{ "Sahne 35 %": "Vollrahm 35 %", Walnüsse: "Baumnüsse", Süßkirschen: "Süsskirschen" },
  ...{ Magermilchpulver: "Magermilch-Pulver", Fruktose: "Fruchtzucker", Honig: "Bienenhonig" },
};

export const VOICE_OF_A_SHOP: Voice = {
  lead: "Enthält:",
  honey: "Mit Honig, darum nicht für Babys im ersten Lebensjahr.",
  alcohol: "Mit Alkohol, nicht für Kinder, Schwangere und Fahrer.",
  nuts: "Ganze Nüsse: Kleinkinder unter 5 Jahren können daran ersticken.",
  egg: "Rohes Eigelb: Masse bis 71 °C erhitzen, sonst pasteurisiertes Eigelb.",
};

export const VOICE_OF_A_TEACHER: Voice = {
  lead: "Allergene:",
  honey: "Honig nie an Kinder unter 12 Monaten geben.",
  alcohol: "Alkohol drin: kein Probieren für Kinder, Schwangere, Lenker.",
  nuts: "Erstickungsgefahr durch ganze Nüsse, nichts für Kinder unter 5 Jahren.",
  egg: "Eigelb ist roh: auf 71 °C bringen oder pasteurisiertes verwenden.",
};

export const VOICE_OF_THE_ALPS: Voice = {
  lead: "Deklaration:",
  honey: "Honig: kein Dessert für Kinder unter 12 Monaten.",
  alcohol: "Alkoholhaltig: nicht an Kinder, Schwangere und Lenkende abgeben.",
  nuts: "Ganze Nüsse: Erstickungsgefahr bei Kindern unter 5 Jahren.",
  egg: "Rohes Eigelb: Masse auf 71 °C erhitzen oder Eigelb pasteurisiert einkaufen.",
};

/** A title as they spell it in Switzerland. */
export const swissTitle = (title: string): string => title.replaceAll("ß", "ss");

/** From and to what a kilogram costs, by kind. */
const PRICES: readonly (readonly [RegExp, readonly [number, number]])[] = [
  [/wasser/i, [0, 0]],
  [/pulver|salz|säure/i, [3, 12]],
  [/zucker|saccharose|dextrose|fruktose|sirup/i, [1, 4]],
  [/milch|joghurt/i, [1, 3]],
  [/rahm|sahne|obers/i, [4, 8]],
  [/nüsse|nuss|pistazien|honig|eigelb|dotter/i, [9, 19]],
  [/vol|rum|wodka/i, [12, 22]],
];

/** What a kilogram of an ingredient may cost; the tap is free. */
export function pricePerKg({ random }: Kit, name: string): Content {
  const [from, to] = PRICES.find(([kind]) => kind.test(name))?.[1] ?? [2, 9];
  return shown(random.whole(10 * from, 10 * to) / 10, "0.00");
}

/** A little table of its own that nothing reads: headings, then rows. */
export function table(
  sheet: CorpusSheet,
  { row, column }: Place,
  heads: readonly Content[],
  rows: readonly (readonly Content[])[],
): Spot[][] {
  return [heads, ...rows].map((cells, index) => putRow(sheet, row + index, column, cells));
}

/** Readings of a thermometer below a heading, in halves of a degree. */
export function readings(
  kit: Kit,
  sheet: CorpusSheet,
  heading: Spot,
  count: number,
  [from, to]: readonly [number, number],
): void {
  const { row, column } = heading;
  const spots = Array.from({ length: count }, (_, index) => {
    const degrees = kit.random.whole(2 * from, 2 * to) / 2;
    return put(sheet, row + 1 + index, column, shown(degrees, "0.0"));
  });
  kit.marked.numberColumns.push({ spots, heading, total: null, kind: "temperature" });
}
