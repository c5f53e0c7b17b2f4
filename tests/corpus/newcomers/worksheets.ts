import { a1, addSheet, fixed, put, putRow, shown, span, type Content, type Spot } from "../book";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { type MarkedRecipe } from "../marks";
import { markRecipe, problems, say, sumOf, type Said } from "../layouts/parts";
import { beside, listed, warn } from "./words";

/** One line of the sheet: letter, words, number, unit; gives the number's cell. */
type Line = (letter: string | undefined, words: string, content: Content, unit?: string) => Spot;

/** Lines of a question from a row down. */
function question({ marked }: Kit, top: number, title: string): Line {
  const sheet = marked.book.sheets[0]!;
  let row = top;
  put(sheet, row++, 0, title);
  return (letter, words, content, unit) =>
    putRow(sheet, row++, 0, [letter, words, content, unit])[2]!;
}

/** A syrup's strength in both ways. */
function syrup(kit: Kit): void {
  const { random, marked } = kit;
  const line = question(kit, 2, "Question 1. A syrup is boiled and left to cool.");
  const sugar = line(undefined, "Caster sugar in it", 20 * random.whole(8, 22), "g");
  const water = line(undefined, "Water in it", 50 * random.whole(5, 9), "g");
  const ratio = shown(`=${a1(sugar)}/${a1(water)}*100`, "0.0");
  const perWater = line("a", "How much sugar goes with 100 g of the water?", ratio, "g");
  const mass = shown(`=${a1(sugar)}/(${a1(sugar)}+${a1(water)})*100`, "0.0");
  const share = line("b", "What share of the syrup's weight is sugar?", mass, "%");
  marked.strengths.push({ sugar, water, perWater, share });
}

/** From the strength on a bottle to grams of alcohol. */
function bottle(kit: Kit): void {
  const { random, marked } = kit;
  const line = question(kit, 8, "Question 2. A parfait is flavoured with a spirit.");
  const abv = line(undefined, "Strength on the bottle", random.pick([37.5, 38, 40, 42]), "% vol");
  const grams = line(undefined, "Spirit weighed in", 5 * random.whole(6, 16), "g");
  const ethanol = `=RIME.ABVTOMASSFRACTION(${a1(abv)})*${a1(grams)}`;
  const alcohol = line("a", "What weight of alcohol is that?", shown(ethanol, "0.0"), "g");
  marked.alcohols.push({ grams, abv, alcohol });
}

/** A solution by the ideal law, step by step. */
function lawful(kit: Kit): void {
  const { list, tolerance } = problems(kit, 1);
  const { solute, grams, waterGrams } = list[0]!;
  const line = question(kit, 13, "Question 3. Something is stirred into water.");
  const name = line(undefined, "What is stirred in", solute.en);
  const mass = line(undefined, "Weight of it", grams, "g");
  const molar = line(undefined, "Its molar mass", shown(solute.molarMass, "0.00"), "g/mol");
  const particles = line(undefined, "Particles it gives (i)", solute.particles);
  const water = line(undefined, "Weight of the water", waterGrams, "g");
  const constant = line(undefined, "Kf of water", shown(1.86, "0.00"), "K·kg/mol");
  const amount = `=${a1(mass)}/${a1(molar)}`;
  const moles = line("a", "How many moles are stirred in?", shown(amount, "0.0000"), "mol");
  const law = `=${a1(particles)}*${a1(constant)}*${a1(moles)}/(${a1(water)}/1000)`;
  const depression = line("b", "How far does the freezing point drop?", shown(law, "0.00"), "K");
  const point = shown(`=-${a1(depression)}`, "0.00");
  const freezingPoint = line("c", "Where does it begin to freeze?", point, "°C");
  const words = `Answers by the ideal law count as right within ${tolerance} K.`;
  const proviso = put(kit.marked.book.sheets[0]!, 24, 1, words);
  kit.marked.solutions.push({
    ...{ names: [name], grams: [mass], molarMasses: [molar], particles: [particles] },
    ...{ moles: [moles], water, constant, depression, freezingPoint, proviso },
  });
}

const ASKED: readonly Said[] = [
  {
    label: "a) All the water, that in the food too (g)",
    states: "water",
    as: "typed",
    decimals: 0,
  },
  { label: "b) Everything dissolved in it (g)", states: "dissolved", as: "typed", decimals: 0 },
  { label: "c) Sugars, % of the weight", states: "sugar share", as: "typed" },
  { label: "d) Begins to freeze at (°C)", states: "freezing point", as: "typed", decimals: 1 },
  {
    label: "e) Frozen part of the water at −15 °C (%)",
    ...{ states: "ice of water", as: "typed", temperatureC: -15, decimals: 0 },
  },
];

/** A recipe beside the questions, what of it is on each plate. */
function recipeCard(kit: Kit): MarkedRecipe {
  const sheet = kit.marked.book.sheets[0]!;
  const made = kit.make(1)[0]!;
  put(sheet, 2, 5, `Question 4. Look up what you need: ${made.title}`);
  const { heads, names, amounts, end } = listed(
    ...([sheet, made, { row: 3, column: 5 }] as const),
    { heads: ["Recipe", "Grams", "% by weight"], cells: (name, grams) => [name, grams] },
  );
  put(sheet, end, 5, "Altogether");
  const total = sumOf(kit, sheet, { row: end, column: 6 }, amounts);
  const alsoAmounts = beside(kit, heads[2]!, amounts, {
    ...{ sheet, format: "0.0", fixed: [total] },
    content: (spot) => `=${a1(spot)}/${fixed(total)}*100`,
  });
  const plates = putRow(sheet, end + 1, 5, ["Plates", kit.random.pick([8, 10, 12])])[1]!;
  const plated = shown(`=${a1(total)}/${a1(plates)}`, "0");
  putRow(sheet, end + 2, 5, ["On each plate (g)", plated]);
  kit.marked.book.names.push({
    ...{ name: "CardWeights", refersTo: `Key!${span(amounts)}`, sheet: null },
  });
  const lines = { names, amounts, alsoAmounts, unit: "g", total } as const;
  return markRecipe(kit, made, { ...lines, amountLabel: heads[1]! });
}

/** What there is to find out about it. */
function askedOf(kit: Kit, recipe: MarkedRecipe): void {
  const sheet = kit.marked.book.sheets[0]!;
  let next = say(sheet, recipe, { row: recipe.total!.row + 4, column: 5 }, ASKED);
  nameTarget(sheet, recipe, { row: next++, column: 5, label: "f) Which dessert is it?" });
  warn(sheet, recipe, { row: next + 1, column: 5 }, "g) Allergens to declare:");
}

/** A worksheet of four questions with its answers filled in. */
function key(kit: Kit): void {
  const sheet = addSheet(kit.marked.book, "Key");
  put(sheet, 0, 0, "Frozen desserts, worksheet 6, with answers");
  syrup(kit);
  bottle(kit);
  lawful(kit);
  askedOf(kit, recipeCard(kit));
  note(kit, sheet, 26, 0, "Two marks for each letter; one off for a missing unit.");
}

/** Question sheets. */
export const worksheets: readonly Layout[] = [
  { name: "worksheet 6 with its answers", language: "en", build: key },
];
