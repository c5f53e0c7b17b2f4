import { a1, addSheet, fixed, put, putRow, shown, type CorpusSheet, type Spot } from "../book";
import { tellIn, type Voice } from "../caterers/words";
import { oneOf } from "../guests/words";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { strip } from "../kitchens/hand";
import { freezesAt } from "../layouts/parts";
import { gramsOf, idealGap, tolerated } from "../solution";
import { isAlcoholic } from "../strollers/words";
import { usual, weighed } from "./words";

const VOICE: Voice = {
  lead: "Allergens, ask the parents:",
  honey: "Honey: none for babies under 12 months.",
  alcohol: "Alcohol: teachers only, none when pregnant or driving.",
  nuts: "Whole nuts: little ones under 5 could choke.",
  egg: "Raw egg yolk: bring the mix to 71 °C, or pasteurised yolk.",
};

interface Top {
  readonly names: readonly [Spot, Spot];
  readonly molarMasses: readonly [Spot, Spot];
  readonly particles: readonly [Spot, Spot];
  readonly constant: Spot;
  readonly heads: readonly Spot[];
}

const SOLUTES = [usual("sucrose"), usual("sodium chloride")] as const;

/** The headings, and what is known of sugar and salt under their names. */
function heading(sheet: CorpusSheet): Top {
  const constant = putRow(sheet, 2, 0, ["Kf for water in K·kg/mol", shown(1.86, "0.00")])[1]!;
  const heads = putRow(sheet, 4, 0, [
    ...["Group", ...SOLUTES.map(({ en }) => en), "water"],
    ...["sugar particles", "salt particles", "ΔT", "sum says", "bag said"],
  ]);
  const molar = putRow(sheet, 5, 0, [
    ...["molar mass, g/mol", ...SOLUTES.map(({ molarMass }) => shown(molarMass, "0.00"))],
  ]);
  const particles = putRow(sheet, 6, 0, ["particles", ...SOLUTES.map((each) => each.particles)]);
  putRow(sheet, 7, 1, ["g", "g", "g", "mol", "mol", "K", "°C", "°C"]);
  const pair = (row: readonly Spot[]) => [row[1]!, row[2]!] as const;
  return {
    ...{ names: pair(heads), molarMasses: pair(molar), particles: pair(particles) },
    ...{ constant, heads },
  };
}

interface Weighing {
  readonly grams: readonly [number, number];
  readonly water: number;
}

/** A group's row: what it weighed, what the sum gives, what the thermometer said. */
function group(kit: Kit, sheet: CorpusSheet, top: Top, weighing: Weighing, index: number) {
  const row = 8 + index;
  const { grams, water } = weighing;
  const name = `Group ${index + 1}`;
  const [, sugar, salt, wet] = putRow(sheet, row, 0, [name, ...grams, water]);
  const moles = ([sugar!, salt!] as const).map((spot, at) => {
    const [mass, count] = [top.molarMasses[at]!, top.particles[at]!];
    return put(sheet, row, 4 + at, shown(`=${a1(spot)}/${fixed(mass)}*${fixed(count)}`, "0.0000"));
  });
  const law = `=${fixed(top.constant)}*(${a1(moles[0]!)}+${a1(moles[1]!)})/(${a1(wet!)}/1000)`;
  const depression = put(sheet, row, 6, shown(law, "0.00"));
  const freezingPoint = put(sheet, row, 7, shown(`=-${a1(depression)}`, "0.00"));
  const real = freezesAt(["water", ...SOLUTES.map(({ en }) => en)], [water, ...grams]);
  const measured = put(sheet, row, 8, shown(real, "0.0"));
  return { grams: [sugar!, salt!], water: wet!, moles, depression, freezingPoint, measured };
}

/** Five groups with sugar and salt in one bag; gives the first free row. */
function bags(kit: Kit, sheet: CorpusSheet): number {
  const { random, marked } = kit;
  const top = heading(sheet);
  const list = Array.from({ length: 5 }, (): Weighing => {
    const water = random.pick([150, 200, 250]);
    const [sugar, salt] = SOLUTES.map((each) => gramsOf(random, each, water));
    return { grams: [sugar!, salt!], water };
  });
  const rows = list.map((each, index) => group(kit, sheet, top, each, index));
  const gap = Math.max(...list.map(({ grams, water }) => idealGap(SOLUTES, grams, water)));
  const text = `Sum by the ideal law, good to about ${tolerated(gap)} K for bags like ours.`;
  const proviso = put(sheet, 14, 0, text);
  const { names, molarMasses, particles, constant, heads } = top;
  for (const { grams, water, moles, depression, freezingPoint } of rows) {
    marked.solutions.push({
      ...{ names, molarMasses, particles, constant, proviso },
      ...{ grams, water, moles, depression, freezingPoint },
    });
  }
  const at = [0, 1].map((each) => rows.map(({ moles }) => moles[each]!));
  const column = (spots: Spot[], head: number, cells: readonly Spot[] = []) =>
    marked.formulaColumns.push({ spots, heading: heads[head]!, fixed: cells });
  at.forEach((spots, each) => column(spots, 4 + each, [molarMasses[each]!, particles[each]!]));
  const depressions = rows.map(({ depression }) => depression);
  column(depressions, 6, [constant]);
  const points = rows.map(({ freezingPoint }) => freezingPoint);
  column(points, 7);
  const spots = rows.map(({ measured }) => measured);
  marked.numberColumns.push({ spots, heading: heads[8]!, total: null, kind: "temperature" });
  return 16;
}

/** Bags of ice, then the recipe that is shaken in them. */
function groupsOfFour(kit: Kit): void {
  const sheet = addSheet(kit.marked.book, "8b");
  put(sheet, 0, 0, "8b ice cream in a bag: five groups, sugar and salt in one bag of water");
  const row = bags(kit, sheet);
  const made = oneOf(kit, (each) => !isAlcoholic(each));
  put(sheet, row, 0, `And the one we eat: ${made.title.toLowerCase()}`);
  const { recipe, end } = weighed(
    kit,
    sheet,
    made,
    { row: row + 1, column: 0 },
    {
      ...{ heads: ["For the whole class", "grams"], cells: (name, grams) => [name, grams] },
      ...{ name: 0, amount: 1, unit: "g", total: "together" },
    },
  );
  strip(sheet, recipe, { row: row + 1, column: 3 }, [
    { label: "water in it, g", states: "water", as: "formula", format: "0" },
    { label: "freezing point, °C", states: "freezing point", as: "typed", decimals: 1 },
    {
      ...{ label: "frozen at −10 °C, % of its water", states: "ice of water", as: "typed" },
      ...{ temperatureC: -10, decimals: 0 },
    },
    { label: "sugar to 100 g of water, g", states: "sugar per 100 g water", as: "typed" },
  ]);
  nameTarget(sheet, recipe, { row: row + 4, column: 3, label: "should become" });
  tellIn(sheet, recipe, { row: end + 1, column: 0 }, VOICE);
  note(kit, sheet, end + 3, 0, "Double the bags, last year two leaked.");
}

/** A class in groups. */
export const classGroups: readonly Layout[] = [
  { name: "8b, ice cream in a bag, sugar and salt per group", language: "en", build: groupsOfFour },
];
