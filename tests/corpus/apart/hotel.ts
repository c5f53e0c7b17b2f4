import { addSheet, put, putRow, shown, type CorpusSheet, type Spot } from "../book";
import type { Voice } from "../caterers/words";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { called, columnOf, perKilogram } from "../kitchens/hand";
import { markRecipe, say, sumOf } from "../layouts/parts";
import type { MadeRecipe } from "../recipes";
import { ofAlcohol } from "../strollers/words";
import { readings, tellBeside } from "./words";

const VOICE: Voice = {
  lead: "Menükarte, Allergene",
  honey: "Menükarte: mit Honig, nicht für Kinder unter 12 Monaten geeignet.",
  alcohol: "Menükarte: mit Alkohol, nicht für Kinder, Schwangere und Fahrer.",
  nuts: "Menükarte: ganze Nüsse, Erstickungsgefahr für Kinder unter 5 Jahren.",
  egg: "Posten: rohes Eigelb, Masse auf 71 °C ziehen oder pasteurisiertes nehmen.",
};

const OWN = {
  ...{ "Sahne 35 %": "Obers 35 %", Eigelb: "Dotter", Zucker: "Feinkristallzucker" },
  ...{ Magermilchpulver: "MMP", Wasser: "Leitungswasser", Haselnüsse: "Haselnusskerne" },
};

/** The lines of a block: grams, the unit, what it is, who has it; the sum on the line of the title. */
function block(kit: Kit, sheet: CorpusSheet, made: MadeRecipe, top: number) {
  const [amountLabel] = putRow(sheet, top + 1, 0, ["Menge", "Einh.", "Ware", "Posten"]);
  const rows = made.names.map((name, index) =>
    putRow(sheet, top + 2 + index, 0, [
      ...[made.grams[index], "g", name, kit.random.pick(["Pâtisserie", "Kühlhaus", "Economat"])],
    ]),
  );
  const [amounts, unitCells, names] = [0, 1, 2].map((at) => columnOf(rows, at)) as [
    Spot[],
    Spot[],
    Spot[],
  ];
  const total = sumOf(kit, sheet, { row: top, column: 0 }, amounts);
  putRow(sheet, top, 1, ["g", made.title]);
  const lines = { names, amounts, unitCells, amountLabel: amountLabel!, total, unit: "g" } as const;
  return { recipe: markRecipe(kit, made, lines), end: top + 2 + rows.length };
}

/** One ice of the week, what is known of it at its right; gives the row for the next. */
function ice(kit: Kit, sheet: CorpusSheet, made: MadeRecipe, top: number, cabinet: Spot): number {
  const { recipe, end } = block(kit, sheet, made, top);
  const served = { temperature: cabinet, temperatureC: -12 };
  const next = say(sheet, recipe, { row: top + 1, column: 5 }, [
    { label: "Gefrierpunkt", inCell: "°C", states: "freezing point", as: "typed", decimals: 1 },
    { label: "gesenkt um", inCell: "K", states: "depression", as: "formula" },
    { label: "Wasser, alles", inCell: "g", states: "water", as: "typed", decimals: 0 },
    { label: "gelöst", inCell: "g", states: "dissolved", as: "formula", format: "0" },
    ...ofAlcohol(made, "Reinalkohol", "g"),
    {
      label: "Wasser gefroren in der Vitrine",
      inCell: "%",
      states: "ice of water",
      as: "formula",
      ...served,
    },
    {
      ...{ label: "Eis im Ganzen bei −18 °C", inCell: "%", decimals: 0 },
      ...{ states: "ice of mix", as: "typed", temperatureC: -18 },
    },
  ]);
  nameTarget(sheet, recipe, { row: next, column: 5, label: "Anrichten" });
  const last = tellBeside(sheet, recipe, { row: next + 1, column: 5 }, VOICE);
  return Math.max(end, last) + 1;
}

const DIENST = ["Mo", "Di", "Mi", "Do", "Fr", "Sa", "So"];

/** Who works when, behind the recipes. */
function duty(kit: Kit, sheet: CorpusSheet): void {
  putRow(sheet, 0, 0, ["Tag", "Früh", "Spät", "Gedecke abends"]);
  DIENST.forEach((day, index) => {
    const [early, late] = [
      kit.random.pick(["Vroni", "Hannes"]),
      kit.random.pick(["Resi", "Jakob"]),
    ];
    putRow(sheet, 1 + index, 0, [day, early, late, kit.random.whole(18, 64)]);
  });
  readings(
    kit,
    sheet,
    { row: 0, column: 5 },
    {
      heads: ["Kontrolle", "Tiefkühlzelle in °C", "Kürzel"],
      ...{ when: DIENST.map((day) => `${day} 22 Uhr`), tenths: [-226, -184] },
      rest: () => [kit.random.pick(["VR", "HA", "RE", "JA"])],
    },
  );
}

/** Three ices of a hotel's week, one below the other. */
function hotel(kit: Kit): void {
  const { marked } = kit;
  const sheet = addSheet(marked.book, "Eis KW 27");
  put(sheet, 0, 0, "Eis und Sorbet der Woche, je 1 kg Masse");
  sheet.merged.push({ top: 0, left: 0, bottom: 0, right: 7 });
  const [label, value] = putRow(sheet, 1, 4, ["Vitrine steht auf °C", shown(-12, "0")]);
  marked.inputs.push({ label: label!, value: value!, bare: "Vitrine steht auf" });
  let top = 3;
  for (const made of kit.make(3)) {
    top = ice(kit, sheet, called(perKilogram(made), OWN), top, value!);
  }
  note(kit, sheet, top, 0, "Gäste mit Zöliakie sagt die Rezeption bis 17 Uhr an.");
  duty(kit, addSheet(marked.book, "Dienst und Zelle"));
}

/** A hotel's pastry. */
export const hotels: readonly Layout[] = [
  { name: "Hotelpâtisserie, drei Eis der Woche untereinander", language: "de", build: hotel },
];
