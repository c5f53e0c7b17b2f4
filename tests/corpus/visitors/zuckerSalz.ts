import { a1, addSheet, fixed, put, putRow, shown, type CorpusSheet, type Spot } from "../book";
import { nameTarget, note, tell, type Kit } from "../kit";
import { markRecipe, say, sumOf } from "../layouts/parts";
import type { MarkedRecipe } from "../marks";
import { columnOf } from "../kitchens/hand";
import { dissolved, idealGap, tolerated, type Dissolved } from "../solution";
import { beside, block } from "./lines";
import { listed } from "./listed";

interface Side {
  readonly solute: Dissolved;
  readonly left: number;
  readonly waterGrams: number;
  readonly grams: readonly number[];
  readonly constant: Spot;
  readonly proviso: Spot;
}

type Shared = Readonly<
  Record<"name" | "molar" | "particles" | "water" | "constant" | "proviso", Spot>
>;

/** One amount of a substance in the water, its answers in the row. */
function step(
  { marked }: Kit,
  { row, left }: { readonly row: number; readonly left: number },
  grams: number,
  { name, molar, particles, water, constant, proviso }: Shared,
): Spot[] {
  const sheet = marked.book.sheets[0]!;
  const mass = put(sheet, row, left, grams);
  const amount = put(sheet, row, left + 1, shown(`=${a1(mass)}/${fixed(molar)}`, "0.0000"));
  const ions = `${fixed(particles)}*${a1(amount)}`;
  const law = `=${ions}/(${fixed(water)}/1000)*${fixed(constant)}`;
  const depression = put(sheet, row, left + 2, shown(law, "0.00"));
  const freezingPoint = put(sheet, row, left + 3, shown(`=-${a1(depression)}`, "0.00"));
  marked.solutions.push({
    ...{ names: [name], grams: [mass], molarMasses: [molar], particles: [particles] },
    ...{ moles: [amount], water, constant, depression, freezingPoint, proviso },
  });
  return [amount, depression, freezingPoint];
}

/** One substance with four amounts of it, its constants above them. */
function side(kit: Kit, sheet: CorpusSheet, plan: Side): void {
  const { solute, left, waterGrams, grams, constant, proviso } = plan;
  const [name, molar, particles, water] = block(sheet, { row: 4, column: left }, [
    ["Stoff", solute.de],
    ["Molare Masse (g/mol)", shown(solute.molarMass, "0.00")],
    ["Teilchenzahl i", solute.particles],
    ["Wasser (g)", waterGrams],
  ]).map(([, spot]) => spot!) as [Spot, Spot, Spot, Spot];
  kit.marked.inputs.push({ label: { ...water, column: left }, value: water, bare: "Wasser" });
  const heads = putRow(sheet, 9, left, ["m (g)", "n (mol)", "ΔT (K)", "T (°C)"]);
  const cells = { name, molar, particles, water, constant, proviso };
  const rows = grams.map((each, index) => step(kit, { row: 10 + index, left }, each, cells));
  [[molar], [particles, water, constant], []].forEach((cells, at) =>
    kit.marked.formulaColumns.push({
      ...{ spots: columnOf(rows, at), heading: heads[1 + at]!, fixed: cells },
    }),
  );
}

/** Sugar water, its strength given both ways, worked out with the pocket calculator. */
function sugarWater({ marked, random }: Kit, sheet: CorpusSheet): void {
  put(sheet, 17, 0, "Zwei Angaben, ein Zuckerwasser (von Hand gerechnet)");
  putRow(sheet, 18, 0, [
    ...["Zucker (g)", "Wasser (g)", "Massenanteil Zucker (%)", "Zucker auf 100 g Wasser (g)"],
  ]);
  for (let row = 19; row < 23; row += 1) {
    const [sweet, wet] = [10 * random.whole(4, 20), random.pick([200, 250])];
    const [sugar, water, share, perWater] = putRow(sheet, row, 0, [
      ...[sweet, wet, shown(Number(((100 * sweet) / (sweet + wet)).toFixed(1)), "0.0")],
      shown(Number(((100 * sweet) / wet).toFixed(1)), "0.0"),
    ]) as [Spot, Spot, Spot, Spot];
    marked.strengths.push({ sugar, water, perWater, share });
  }
}

/** What the class is told of its ice. */
function classAnswers(kit: Kit, sheet: CorpusSheet, recipe: MarkedRecipe, row: number): void {
  const next = say(sheet, recipe, { row, column: 0 }, [
    { label: "Gefrierpunkt der Mischung (°C)", states: "freezing point", as: "typed", decimals: 1 },
    { label: "Erniedrigung gegen Wasser (K)", states: "depression", as: "formula" },
    { label: "Wasser insgesamt (g)", states: "water", as: "formula", format: "0" },
    {
      label: "Anteil des Wassers, der bei −18 °C gefroren ist (%)",
      ...{ states: "ice of water", as: "typed", temperatureC: -18 },
    },
  ]);
  nameTarget(sheet, recipe, { row: next, column: 0, label: "Das Eis soll werden:" });
  tell(kit, sheet, recipe, { row: next + 2, column: 0, as: "sentence" });
}

/** The ice that the class makes in the end. */
function classIce(kit: Kit): void {
  const sheet = addSheet(kit.marked.book, "Eis der Klasse");
  const made = kit.make(1)[0]!;
  put(sheet, 0, 0, `Zum Schluss wird gerührt: ${made.title}`);
  const { heads, names, amounts, total, row } = listed(kit, sheet, made, {
    ...{ top: 2, left: 0, name: 0, amount: 2, sum: "gesamt" },
    headings: ["Zutat", "Massenanteil w (%)", "m (g)", "wer bringt mit"],
    line: (at) => [made.names[at], undefined, made.grams[at], `Gruppe ${1 + (at % 3)}`],
  });
  const plan = { column: 1, heading: heads[1]!, fixed: [total], format: "0.0" };
  const shares = beside(kit, amounts, plan, (amount) => `=100*${amount}/${fixed(total)}`);
  sumOf(kit, sheet, { row, column: 1 }, shares, "0.0");
  const recipe = markRecipe(kit, made, {
    ...{ names, amounts, alsoAmounts: shares, unit: "g", amountLabel: heads[2]!, total },
  });
  classAnswers(kit, sheet, recipe, row + 2);
}

/** Sugar at the left, salt at the right, four amounts each in the same water. */
export function sugarAndSalt(kit: Kit): void {
  const sheet = addSheet(kit.marked.book, "Zucker und Salz");
  put(sheet, 0, 0, "Was senkt den Gefrierpunkt stärker: Zucker oder Salz?");
  const constant = putRow(sheet, 2, 0, ["Kf (K·kg/mol)", shown(1.86, "0.00")])[1]!;
  const waterGrams = kit.random.pick([500, 1000]);
  const both = [dissolved[0]!, dissolved[1]!].map((solute, index) => {
    const { gramsPerKg } = solute;
    const step = (gramsPerKg[1] * waterGrams) / 4000;
    const grams = [1, 2, 3, 4].map((times) => Math.floor(step * times));
    return { solute, left: 6 * index, waterGrams, grams };
  });
  const gaps = both.flatMap(({ solute, grams }) =>
    grams.map((each) => idealGap([solute], [each], waterGrams)),
  );
  const gap = tolerated(Math.max(...gaps)).replace(".", ",");
  const text = `Ideales Verhalten angenommen, Ergebnisse auf ${gap} K genau.`;
  const proviso = put(sheet, 15, 0, text);
  for (const each of both) side(kit, sheet, { ...each, constant, proviso });
  sugarWater(kit, sheet);
  note(kit, sheet, 24, 0, "Schutzbrille auf, nichts im Labor probieren.");
  classIce(kit);
}
