import { addSheet, put, type CorpusSheet } from "../book";
import { tellIn, type Voice } from "../caterers/words";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { called } from "../kitchens/hand";
import { say, type Said } from "../layouts/parts";
import { readings } from "../wanderers/worte";
import { solution } from "../solution";
import { mix, small, solutes } from "../benches/words";

const VOICE: Voice = {
  lead: "Vor dem Probieren vorlesen! Drin ist",
  honey: "Honig drin: Geschwister unter 12 Monaten bekommen nichts.",
  alcohol: "Alkohol drin: nur fürs Kollegium, nicht schwanger, nicht am Steuer.",
  nuts: "Ganze Nüsse: für Kinder unter 5 Jahren zum Verschlucken gefährlich.",
  egg: "Rohes Eigelb: bis 71 °C erwärmen oder pasteurisiert kaufen.",
};

/** What the class works out first, at the left. */
function task(kit: Kit, sheet: CorpusSheet): void {
  put(sheet, 3, 0, "AUFGABE (25 min, Partnerarbeit): Wann gefriert unser Zaubertrank?");
  solution(kit, sheet, {
    ...{ top: 5, left: 0, count: 3, inputsFirst: true },
    from: solutes("sucrose", "sodium chloride", "fructose", "glucose monohydrate"),
    headings: ["hinein kommt", "Gramm", "g je mol", "wird zu ... Teilchen", "mol Teilchen"],
    words: {
      water: ["Wasser im Kessel (g)", "Wasser im Kessel"],
      constant: "Konstante für Wasser (K·kg/mol)",
      depression: "Lösung: gefriert tiefer um (K)",
      freezingPoint: "Lösung: Gefrierpunkt (°C)",
      proviso: (gap) => `Formel für ideale Lösungen, für diesen Kessel stimmt sie auf ${gap} K.`,
    },
  });
  note(kit, sheet, 19, 0, "Schnelle rechnen dasselbe mit doppelt so viel Wasser.");
}

const SAID: readonly Said[] = [
  { label: "gefriert ab (°C)", states: "freezing point", as: "typed", decimals: 1 },
  { label: "das sind unter 0 (K)", states: "depression", as: "typed", decimals: 1 },
  { label: "Wasser, alles zusammen (g)", states: "water", as: "formula", format: "0" },
  {
    ...{ label: "in der Truhe bei −22 °C vom Wasser fest (%)", decimals: 0 },
    ...{ states: "ice of water", as: "typed", temperatureC: -22 },
  },
];

/** What they get for it, at the right. */
function reward(kit: Kit, sheet: CorpusSheet): void {
  const made = called(kit.make(1)[0]!, { Zucker: "Zucker (weiß)" });
  put(sheet, 3, 7, `BELOHNUNG (liegt in der Truhe): ${made.title}`);
  const { recipe, end } = mix(kit, sheet, made, {
    ...{ row: 6, column: 7, heads: ["g", "wovon"], name: 1, amount: 0 },
    ...{ total: "alles", above: true },
    cells: (item, grams) => [grams, item],
  });
  const next = say(sheet, recipe, { row: end + 1, column: 8 }, SAID);
  nameTarget(sheet, recipe, { row: next, column: 8, label: "so soll es werden" });
  tellIn(sheet, recipe, { row: 21, column: 0 }, VOICE);
}

/** A cover lesson on one sheet, as it lies in the pigeonhole. */
function cover(kit: Kit): void {
  const sheet = addSheet(kit.marked.book, "Vertretung");
  put(sheet, 0, 0, "Vertretung 9c, 5. und 6. Stunde, Raum 114");
  put(sheet, 1, 0, "Liegt fertig kopiert im Fach, Lösungen stehen schon drin");
  task(kit, sheet);
  reward(kit, sheet);
  const heading = put(sheet, 24, 1, "Truhe (°C)");
  small(sheet, { row: 24, column: 0 }, [["abgelesen"], ["Mo"], ["Di"], ["Mi"], ["Do"]]);
  readings(kit, sheet, heading, { count: 4, tenths: [-238, -205] });
  small(sheet, { row: 24, column: 3 }, [
    ["fehlt", "Klassenbuch"],
    ["zwei krank", "eingetragen"],
    ["einer beim Zahnarzt", "ab 11:30 da"],
  ]);
}

/** A cover lesson in chemistry. */
export const vertretungen: readonly Layout[] = [
  { name: "Vertretungsstunde 9c auf einem Blatt", language: "de", build: cover },
];
