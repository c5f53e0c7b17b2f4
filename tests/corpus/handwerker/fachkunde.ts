import { addSheet, put, putRow, shown, type CorpusSheet } from "../book";
import { tellIn } from "../caterers/words";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { called, columnOf } from "../kitchens/hand";
import { say } from "../layouts/parts";
import { List } from "../list";
import { solution } from "../solution";
import { temperatures } from "../strollers/words";
import { AUSTRIAN, VOICE_OF_A_TEACHER } from "./words";

/** The sum of the lesson, and what the freezers of the school kitchen show. */
function sumSheet(kit: Kit, sheet: CorpusSheet): void {
  put(sheet, 0, 0, "Fachkunde 2. Klasse: Was Zucker und Salz mit dem Gefrierpunkt machen");
  solution(kit, sheet, {
    ...{ top: 2, left: 1, count: 3 },
    headings: [
      ...(["aufgelöst", "Einwaage in g", "molare Masse in g/mol"] as const),
      ...(["zerfällt in Teilchen", "Teilchen in mol"] as const),
    ],
    words: {
      water: ["Wasser im Topf in g", "Wasser im Topf"],
      constant: "Kf (Wasser) in K·kg/mol",
      depression: "Erniedrigung in K",
      freezingPoint: "neuer Gefrierpunkt in °C",
      proviso: (gap) => `Gilt für verdünnte Lösungen; hier stimmt es auf ${gap} K.`,
    },
  });
  const heads = putRow(sheet, 2, 8, ["Lade", "abgelesen in °C"]);
  const rows = ["oben", "Mitte", "unten"].map((drawer, index) =>
    putRow(sheet, 3 + index, 8, [drawer, shown(-kit.random.whole(35, 44) / 2, "0.0")]),
  );
  temperatures(kit, heads[1]!, columnOf(rows, 1));
  note(kit, sheet, 1, 0, "Erst rechnen, dann messen, dann kosten.");
}

/** The recipe that the class makes afterwards. */
function recipeSheet(kit: Kit, sheet: CorpusSheet): void {
  const made = called(kit.make(1)[0]!, AUSTRIAN);
  putRow(sheet, 0, 0, ["Arbeitsrezept", made.title]);
  const { recipe, totalRow } = new List(kit, sheet, made, {
    ...{ top: 2, left: 0, unit: "g", total: "Gesamtmasse" },
    columns: ["number", "name", "amount", "unit", "share", "allergen", "remark"],
    headings: {
      ...{ number: "Nr.", name: "Lebensmittel", amount: "Menge", unit: "Einheit" },
      ...{ share: "Anteil", allergen: "Allergen", remark: "Hinweis" },
    },
  });
  const next = say(sheet, recipe, { row: totalRow + 2, column: 1 }, [
    { label: "Gefrierpunkt der Masse in °C", states: "freezing point", as: "formula" },
    { label: "Erniedrigung in K", states: "depression", as: "typed" },
    { label: "Wasser in allen Zutaten in g", states: "water", as: "typed", decimals: 0 },
    { label: "gelöste Stoffe in g", states: "dissolved", as: "formula", format: "0" },
    {
      label: "Eis in der Masse bei −16 °C in %",
      ...{ states: "ice of mix", as: "typed", temperatureC: -16, decimals: 0 },
    },
  ]);
  nameTarget(sheet, recipe, { row: next, column: 1, label: "Ziel" });
  tellIn(sheet, recipe, { row: next + 2, column: 0 }, VOICE_OF_A_TEACHER);
}

/** A school for tourism: the law by hand, and the recipe. */
function fachkunde(kit: Kit): void {
  sumSheet(kit, addSheet(kit.marked.book, "Rechenblatt"));
  recipeSheet(kit, addSheet(kit.marked.book, "Arbeitsrezept"));
}

/** A vocational school in Austria. */
export const fachkunden: readonly Layout[] = [
  { name: "Fachkunde, Rechenblatt und Arbeitsrezept", language: "de", build: fachkunde },
];
