import {
  a1,
  addSheet,
  fixed,
  put,
  putRow,
  shown,
  span,
  type CorpusSheet,
  type Spot,
} from "../book";
import { note, type Kit, type Layout } from "../kit";
import { columnOf } from "../kitchens/hand";
import { input } from "../page";
import { choose, gramsOf, idealGap, tolerated } from "../solution";

const HEADS = [
  ...["Zugabe", "Masse m (g)", "Molmasse M (g/mol)", "n = m/M (mol)", "Teilchenzahl i"],
  "n·i je kg Wasser (mol/kg)",
];

/** What the groups pour together, a row each. */
function poured(kit: Kit, sheet: CorpusSheet, waterGrams: number, water: Spot) {
  const { random, marked } = kit;
  const solutes = choose(random, 4);
  const grams = solutes.map((each) => gramsOf(random, each, waterGrams * 0.5));
  const heads = putRow(sheet, 5, 0, HEADS);
  const rows = solutes.map(({ de, molarMass, particles }, index) => {
    const row = 6 + index;
    const [name, mass, molar] = putRow(sheet, row, 0, [
      ...[de, grams[index], shown(molarMass, "0.00")],
    ]) as [Spot, Spot, Spot];
    const amount = put(sheet, row, 3, shown(`=${a1(mass)}/${a1(molar)}`, "0.0000"));
    const count = put(sheet, row, 4, particles);
    const molal = `=${a1(amount)}*${a1(count)}/${fixed(water)}*1000`;
    return [name, mass, molar, amount, count, put(sheet, row, 5, shown(molal, "0.0000"))];
  });
  [3, 5].forEach((at) =>
    marked.formulaColumns.push({
      ...{ spots: columnOf(rows, at), heading: heads[at]!, fixed: at === 5 ? [water] : [] },
    }),
  );
  return { rows, gap: tolerated(idealGap(solutes, grams, waterGrams)) };
}

/** One bowl for the whole class, up to its freezing point. */
function bowl(kit: Kit, sheet: CorpusSheet): void {
  const { random, marked } = kit;
  const waterGrams = random.pick([400, 500, 800]);
  const words = { label: "Wasser in der Schüssel (g)", bare: "Wasser in der Schüssel" };
  const water = input(kit, sheet, { row: 2, column: 0 }, { ...words, value: waterGrams });
  const constant = putRow(sheet, 3, 0, ["Konstante Kf (K·kg/mol)", shown(1.86, "0.00")])[1]!;
  const { rows, gap } = poured(kit, sheet, waterGrams, water);
  const cells = (at: number): Spot[] => columnOf(rows, at);
  const moles = cells(5);
  put(sheet, 10, 4, "Summe");
  const sum = put(sheet, 10, 5, shown(`=SUM(${span(moles)})`, "0.0000"));
  marked.sums.push({ spot: sum, parts: moles });
  const law = shown(`=${a1(constant)}*${a1(sum)}`, "0.00");
  const depression = putRow(sheet, 12, 0, ["Der Gefrierpunkt sinkt um (K)", law])[1]!;
  const below = shown(`=0-${a1(depression)}`, "0.00");
  const freezingPoint = putRow(sheet, 13, 0, ["Die Lösung gefriert ab (°C)", below])[1]!;
  const near = gap.replace(".", ",");
  const text = `Faustformel für verdünnte Lösungen, hier auf ${near} K genau.`;
  const proviso = put(sheet, 14, 0, text);
  marked.solutions.push({
    ...{ names: cells(0), grams: cells(1), molarMasses: cells(2), particles: cells(4) },
    ...{ counted: cells(3), moles, water, constant, depression, freezingPoint, proviso },
  });
}

const GROUPS = ["Gruppe rot", "Gruppe gelb", "Gruppe grün", "Gruppe blau"];

/** Sugar water of the groups, said in both ways. */
function sugarWater({ random, marked }: Kit, sheet: CorpusSheet): void {
  put(sheet, 16, 0, "Wie süß ist das Zuckerwasser der Gruppen?");
  const heads = putRow(sheet, 17, 0, [
    ...["Gruppe", "Zucker in g", "Wasser in g", "g Zucker je 100 g Wasser", "Zucker in Massen-%"],
  ]);
  const rows = GROUPS.map((group, index) => {
    const row = 18 + index;
    const amounts = [20 * random.whole(2 + index, 4 + index), random.pick([150, 200])];
    const [, sugar, water] = putRow(sheet, row, 0, [group, ...amounts]) as [Spot, Spot, Spot];
    const [sweet, wet] = [a1(sugar), a1(water)];
    const perWater = put(sheet, row, 3, shown(`=${sweet}/${wet}*100`, "0.0"));
    const share = put(sheet, row, 4, shown(`=${sweet}/(${wet}+${sweet})*100`, "0.0"));
    marked.strengths.push({ sugar, water, perWater, share });
    return [perWater, share];
  });
  [0, 1].forEach((at) =>
    marked.formulaColumns.push({ spots: columnOf(rows, at), heading: heads[3 + at]!, fixed: [] }),
  );
}

/** A double lesson: a bowl worked out, then sugar waters. */
function realschule(kit: Kit): void {
  const sheet = addSheet(kit.marked.book, "Doppelstunde");
  put(sheet, 0, 0, "Realschule Klasse 10: Warum gefriert eine Lösung erst unter 0 °C?");
  bowl(kit, sheet);
  sugarWater(kit, sheet);
  note(kit, sheet, 23, 0, "Thermometer vor der Stunde in Eiswasser prüfen.");
}

/** A chemistry teacher. */
export const realschulen: readonly Layout[] = [
  { name: "Realschule, eine Schüssel und das Zuckerwasser", language: "de", build: realschule },
];
