import { a1, addSheet, put, putRow, shown, type CorpusSheet, type Spot } from "../book";
import { tellIn } from "../caterers/words";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { called, columnOf, largestFirst } from "../kitchens/hand";
import { markRecipe, problems, say, sumOf, type Said } from "../layouts/parts";
import { beside, listed } from "../newcomers/words";
import { grid, type Lines } from "../scholars/grid";
import * as words from "../scholars/words";
import { solution } from "../solution";
import { stimme } from "../settled/stimme";
import { table } from "../settled/words";

const { typed, worked } = words;

/** What is known of each bottle and what follows. */
const LINES: Lines = {
  label: { head: "Flasche", cell: (_, __, index) => `F${index + 1}` },
  name: typed("gelöster Stoff", ({ solute }) => solute.de),
  mass: typed("Masse (g)", ({ grams }) => grams),
  water: typed("auf Wasser (g)", ({ waterGrams }) => waterGrams),
  molar: typed("molare Masse (g/mol)", words.molarOf),
  particles: typed("Teilchenzahl", words.particlesOf),
  constant: typed("Kf (K·kg/mol)", () => shown(1.86, "0.00")),
  moles: worked("Stoffmenge (mol)", (at) => `${at("mass")}/${at("molar")}`, "0.0000"),
  depression: worked(
    "Erniedrigung (K)",
    (at) => `${at("constant")}*${at("particles")}*${at("moles")}*1000/${at("water")}`,
    "0.00",
  ),
  freezingPoint: worked("Gefriert bei (°C)", (at) => `-${at("depression")}`, "0.00"),
  measured: typed("abgelesen (°C)", (each) => shown(words.reading(each), "0.0")),
};

/** Four bottles, a row each. */
function flaschen(kit: Kit): void {
  const sheet = addSheet(kit.marked.book, "Flaschen");
  const { list, tolerance } = problems(kit, 4);
  put(sheet, 0, 0, "Lehrgang Speiseeis, Block 2: Wer macht weicher?");
  const made = grid(kit, sheet, { row: 2, column: 0 }, LINES, list);
  const text = `Ideal gerechnet; bei diesen Flaschen liegt das um höchstens ${tolerance} K daneben.`;
  words.markEach(kit, made, put(sheet, made.end + 1, 0, text), () => ({}));
  note(kit, sheet, made.end + 2, 0, "Die Flaschen bleiben über Nacht im Froster.");
}

/** The homework with its solution, the marks beside it. */
function hausaufgabe(kit: Kit): void {
  const sheet = addSheet(kit.marked.book, "Hausaufgabe");
  put(sheet, 0, 0, "Hausaufgabe mit Lösung: zwei Stoffe im selben Topf");
  solution(kit, sheet, {
    ...{ top: 2, left: 0, count: 2 },
    headings: ["Zugabe", "Masse in g", "M in g/mol", "Teilchen je Formel", "n der Teilchen in mol"],
    words: {
      water: ["Wasser im Topf (g)", "Wasser im Topf"],
      constant: "Kf von Wasser (K·kg/mol)",
      depression: "Gefrierpunktserniedrigung (K)",
      freezingPoint: "Gefrierpunkt (°C)",
      proviso: (gap) => `Gilt für ideale Lösungen, hier auf ${gap} K genau.`,
    },
  });
  const rows = ["Anna", "Bela", "Cem", "Dora"].map((who) => [who, kit.random.whole(9, 20)]);
  const noten = table(sheet, { row: 2, column: 7 }, ["Name", "Punkte von 20"], rows);
  put(sheet, noten.end, 7, "Mittel");
  const points = columnOf(noten.rows, 1);
  const mean = `=AVERAGE(${a1(points[0]!)}:${a1(points.at(-1)!)})`;
  put(sheet, noten.end, 8, shown(mean, "0.0"));
}

const SAID: readonly Said[] = [
  { label: "Beginn des Gefrierens (°C)", states: "freezing point", as: "typed", decimals: 1 },
  { label: "Erniedrigung gegen Wasser (K)", states: "depression", as: "formula" },
  { label: "Wasser in 100 g (g)", states: "water", as: "typed", decimals: 1 },
  {
    ...{ label: "vom Wasser gefroren bei −18 °C (%)", states: "ice of water" },
    ...{ as: "typed", temperatureC: -18, decimals: 0 },
  },
];

/** The recipe in per cent, and in grams for each group. */
function rezeptur(kit: Kit, sheet: CorpusSheet): void {
  const made = called(largestFirst(kit.make(1)[0]!), { Zucker: "Haushaltszucker" });
  put(sheet, 0, 0, `Zum Schluss wird gefroren: ${made.title}`);
  const [label, value] = putRow(sheet, 1, 0, ["je Gruppe (g)", 100 * kit.random.whole(6, 12)]);
  kit.marked.inputs.push({ label: label!, value: value!, bare: "je Gruppe" });
  const plan = {
    heads: ["Rohstoff", "Massen-%", "Gruppe wiegt (g)"],
    cells: (name: string, grams: number) => [name, shown(grams, "0.0")],
  };
  const list = listed(sheet, made, { row: 3, column: 0 }, plan);
  const { heads, names, amounts, end } = list;
  const grams = beside(kit, heads[2]!, amounts, {
    ...{ sheet, format: "0", fixed: [value!] },
    content: (spot: Spot) => `=${a1(spot)}*$B$2/100`,
  });
  put(sheet, end, 0, "Probe");
  const total = sumOf(kit, sheet, { row: end, column: 1 }, amounts, "0.0");
  sumOf(kit, sheet, { row: end, column: 2 }, grams, "0");
  const cells = { names, amounts, alsoAmounts: grams, total, amountLabel: heads[1]! } as const;
  const recipe = markRecipe(kit, made, { ...cells, unit: "%" });
  const next = say(sheet, recipe, { row: 4, column: 4 }, SAID);
  nameTarget(sheet, recipe, { row: next, column: 4, label: "gewünscht" });
  tellIn(sheet, recipe, { row: end + 2, column: 0 }, stimme("Allergene:"));
}

/** A course on three sheets. */
export const lehrgaenge: readonly Layout[] = [
  {
    ...{ name: "Lehrgang Speiseeis, Flaschen, Hausaufgabe und Rezeptur", language: "de" },
    build: (kit) => {
      flaschen(kit);
      hausaufgabe(kit);
      rezeptur(kit, addSheet(kit.marked.book, "Rezeptur"));
    },
  },
];
