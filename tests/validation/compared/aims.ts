import type { ComparedFigure, Comparison } from "./comparison";
import { ourMisses } from "./misses";

/** What the project set out to reach against figures that no fit has read. */
export interface Aim {
  readonly name: string;
  readonly missUnit: "K" | "a_w" | "points";
  readonly rms: number | null;
  readonly largest: number | null;
  readonly figures: readonly ComparedFigure[];
  /** Why it is missed, in a few words; null where it is reached. */
  readonly reason: string | null;
}

/** Whether the figures keep to both limits. */
export function isReached({ rms, largest, figures }: Aim): boolean {
  const ours = ourMisses(figures);
  return (rms === null || ours.rms <= rms) && (largest === null || ours.largest <= largest);
}

type Limits = readonly [rms: number | null, largest: number | null];

function aim(
  name: string,
  [rms, largest]: Limits,
  figures: readonly ComparedFigure[],
  { missUnit = "K", reason = null }: Partial<Pick<Aim, "missUnit" | "reason">> = {},
): Aim {
  return { name, missUnit, rms, largest, figures, reason };
}

/** Picks figures that were kept back, by comparison and by substance. */
function picker(comparisons: readonly Comparison[]) {
  const held = comparisons.filter(({ use }) => use === "held out");
  const only = (...ids: readonly string[]) =>
    held.filter(({ id }) => ids.some((one) => id.startsWith(one))).flatMap((one) => one.figures);
  const of = (figures: readonly ComparedFigure[], ...groups: readonly string[]) =>
    figures.filter(({ group }) => groups.includes(group));
  return {
    only,
    of,
    single: (...names: readonly string[]) => of(only("freezing-"), ...names),
    eutectic: (name: string) => of(only("eutectics"), name),
    mixture: (group: RegExp) => only("mixture-").filter((one) => group.test(one.group)),
    sucroseActivity: () => of(only("isopiestic-", "osmotic-", "sucrose-correlation"), "sucrose"),
  };
}

const toC = (coldestC: number, figures: readonly ComparedFigure[]) =>
  figures.filter(({ printed }) => printed >= coldestC);

/** Sugars, milk and what is made of them. */
function kitchenAims({ only, eutectic, sucroseActivity }: ReturnType<typeof picker>): Aim[] {
  const driest = only("honey").filter(({ label }) => !label.includes("21 %"));
  return [
    aim("single sugars above −5 °C", [0.02, 0.05], only("left-out-fifths")),
    aim("sucrose to 47 % solids, dairy table", [0.12, null], only("dairy-sucrose")),
    aim("sucrose, eutectic", [null, 0.3], eutectic("sucrose")),
    aim("glucose, eutectic", [null, 0.15], eutectic("glucose")),
    aim("fructose, eutectic", [null, 0.8], eutectic("fructose")),
    aim("whole and skim milk within −0.512 to −0.540 °C", [null, 0.014], only("milk")),
    aim("ice-cream mixes", [0.1, 0.15], only("ice-cream")),
    aim("six kinds of fruit", [0.12, 0.2], only("fruit"), {
      reason: "Sweet cherry is 0.25 K too cold: sugars of fruit vary by lot and sort.",
    }),
    aim("sucrose to 65 %, water activity at 25 °C", [0.002, 0.006], sucroseActivity(), {
      missUnit: "a_w",
    }),
    aim("honey at 15 to 20 % water", [0.02, 0.03], driest, { missUnit: "a_w" }),
    aim("boiling point of 65.46 % sucrose", [null, 0.4], only("boiling")),
  ];
}

/** Salts, alcohols and their mixtures. */
function saltAims({ only, single, mixture }: ReturnType<typeof picker>): Aim[] {
  const frozenButLange = only("share-").filter((one) => !only("share-lange15").includes(one));
  const rmsBut = (name: string, id: string): string => {
    const left = new Set(only(id));
    const figures = toC(-40, single(name)).filter((one) => !left.has(one));
    return ourMisses(figures).rms.toFixed(2);
  };
  return [
    aim("sodium chloride standards", [0.004, 0.006], only("cryoscope", "osmometer")),
    aim(
      "sodium and potassium chloride to their eutectics",
      [0.1, 0.3],
      single("sodium chloride", "potassium chloride"),
    ),
    aim(
      "calcium and magnesium chloride",
      [0.35, 1.5],
      single("calcium chloride", "magnesium chloride"),
      { reason: "The sources differ by 1.3 to 1.5 K where they are strong; ± 3 % is stated." },
    ),
    aim("glycerol to −40 °C", [0.3, 1.7], toC(-40, single("glycerol"))),
    aim("propylene glycol to −40 °C", [0.2, 1.7], toC(-40, single("propylene glycol")), {
      reason: `Lange’s table is printed by volume in whole °F; without it the RMS is ${rmsBut("propylene glycol", "freezing-lange15")} K.`,
    }),
    aim("ethanol to −40 °C", [0.4, 1.7], toC(-40, single("ethanol")), {
      reason: `Lange is up to 1.6 K warmer than the CRC Handbook and Melinder, which agree; without it the RMS is ${rmsBut("ethanol", "freezing-lange15")} K.`,
    }),
    aim("sodium with potassium chloride", [0.05, 0.15], mixture(/^sodium .* potassium/)),
    aim("other pairs of chlorides", [0.05, 0.15], mixture(/(calcium|magnesium) chloride$/), {
      reason: "At strength 2 to 3 % of the depression; the single curves carry ± 3 % themselves.",
    }),
    aim("seawater and its brine to 12 % salt", [0.05, 0.15], mixture(/seawater/)),
    aim("share of water frozen, 3.5 % salt and seawater", [0.3, 0.6], only("share-"), {
      missUnit: "points",
      reason: `Lange lies 0.08 K off the other tables, which tells within 1.6 K of freezing; without it the largest is ${ourMisses(frozenButLange).largest.toFixed(2)} points.`,
    }),
  ];
}

/** The limits the project set itself before it looked at the misses, each with the figures it is held to. */
export function aimsOf(comparisons: readonly Comparison[]): readonly Aim[] {
  const pick = picker(comparisons);
  return [...kitchenAims(pick), ...saltAims(pick)];
}
