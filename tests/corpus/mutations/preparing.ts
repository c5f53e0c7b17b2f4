import type { Prepare } from "../kit";
import { massOf, withLines } from "../recipes";
import { ALCOHOL, line, stock, type StockLine } from "../stock";

const NUTS = [
  line("hazelnuts", "Haselnüsse", 0),
  line("pecans", "Pekannüsse", 0),
  line("digestive biscuits", "Vollkornkekse", 0),
  line("dark chocolate (pieces)", "Zartbitterschokolade (Stücke)", 0),
];
const LABELS = new Map(stock.flatMap(({ lines }) => lines.map((each) => [each.en, each] as const)));
const TOLD: Readonly<Record<string, StockLine["allergen"]>> = {
  pecans: { en: "tree nuts (pecans)", de: "Schalenfrüchte (Pekannüsse)" },
  "digestive biscuits": { en: "gluten (wheat), milk", de: "Gluten (Weizen), Milch" },
  "dark chocolate (pieces)": { en: "milk, soy", de: "Milch, Soja" },
};

/** Adds nuts or other pieces. */
export const withNuts: Prepare = (made, random) => {
  const chosen = random.pick(NUTS);
  const allergen = TOLD[chosen.en];
  const label = LABELS.get(chosen.en) ?? { ...chosen, ...(allergen !== undefined && { allergen }) };
  const grams = Math.round(massOf(made) * random.between(0.07, 0.14));
  const lines = made.lines.filter(({ en }) => en !== chosen.en);
  return { ...withLines(made, [...lines, { ...label, grams }]), seeded: [chosen[made.language]] };
};

/** Adds a spirit. */
export const withSpirit: Prepare = (made, random) => {
  const name = random.pick([
    ["vodka 40 %", "Wodka 40 %"],
    ["rum 40 %", "Rum 40 %"],
    ["vodka 37.5 %", "Wodka 37,5 %"],
  ] as const);
  const lines = made.lines.filter(({ caution }) => caution !== ALCOHOL.caution);
  const spirit = line(
    name[0],
    name[1],
    Math.round(massOf(made) * random.between(0.04, 0.08)),
    ALCOHOL,
  );
  return { ...withLines(made, [...lines, spirit]), seeded: [spirit[made.language]] };
};
