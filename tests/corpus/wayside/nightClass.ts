import { a1, addSheet, put, putRow, shown, type CorpusSheet, type Spot } from "../book";
import { note, type Kit, type Layout } from "../kit";
import { problems, type Problem } from "../layouts/parts";
import { block, ice, reading, shortMix } from "../scholars/words";
import { temperatures } from "../strollers/words";

/** One jar, all down a column of its own: what is known, then sums; gives the thermometer's cell. */
function jar(
  kit: Kit,
  sheet: CorpusSheet,
  { solute, waterGrams, grams }: Problem,
  [column, letter, proviso]: readonly [number, string, Spot],
): Spot {
  put(sheet, 3, column, `jar ${letter}`);
  const known = block(
    sheet,
    { row: 4, column },
    {
      water: ["water, g", waterGrams],
      name: ["stirred in", solute.en],
      mass: ["how much of it, g", grams],
      particles: ["bits each unit splits into", solute.particles],
      molar: ["g for one mole", shown(solute.molarMass, "0.00")],
      constant: ["Kf (K kg/mol)", shown(1.86, "0.00")],
    },
  );
  const { water, name, mass, particles, molar, constant } = known;
  const at = (row: number): string => a1({ sheet: sheet.name, row, column: column + 1 });
  const sums = block(
    sheet,
    { row: 11, column },
    {
      moles: ["moles", shown(`=${a1(mass)}/${a1(molar)}`, "0.0000")],
      molality: ["moles per kg water", shown(`=1000*${at(11)}/${a1(water)}`, "0.000")],
      depression: ["drop (K)", shown(`=${a1(constant)}*${a1(particles)}*${at(12)}`, "0.00")],
      freezingPoint: ["should freeze at (°C)", shown(`=-${at(13)}`, "0.00")],
      measured: ["probe said (°C)", shown(reading({ solute, waterGrams, grams }), "0.0")],
    },
  );
  kit.marked.solutions.push({
    ...{ names: [name], grams: [mass], molarMasses: [molar], particles: [particles] },
    ...{ moles: [sums.moles], water, constant, proviso },
    ...{ depression: sums.depression, freezingPoint: sums.freezingPoint },
  });
  return sums.measured;
}

/** Four jars beside each other and what is drunk afterwards, on the same page. */
function nightClass(kit: Kit): void {
  const sheet = addSheet(kit.marked.book, "wk 3");
  putRow(sheet, 0, 0, ["Week 3", undefined, "why doesn't the slush set like an ice cube?"]);
  const { list, tolerance } = problems(kit, 4);
  const text = `Remember we pretend the jars are ideal. Good to ${tolerance} K, no better.`;
  const proviso = put(sheet, 1, 2, text);
  const probes = list.map((each, index) =>
    jar(kit, sheet, each, [3 * index, "PQRS"[index]!, proviso]),
  );
  temperatures(kit, { ...probes[0]!, column: 0 }, probes);
  note(kit, sheet, 17, 3, "jar Q leaked last year, check the lid");
  const mix = shortMix(kit, "water", ["Cola-free slush", "Slush"]);
  put(sheet, 18, 0, "and this one's for drinking");
  ice(kit, sheet, mix, {
    ...{ row: 19, column: 0, heads: ["into the jug", "g"], total: "whole jug" },
    ...{ target: "meant to be", lead: "Contains", saidRight: 3 },
    said: [
      { label: "slush starts at (°C)", states: "freezing point", as: "typed", decimals: 1 },
      { label: "drop (K)", states: "depression", as: "formula", format: "0.00" },
      { label: "sugars to 100 g of water (g)", states: "sugar per 100 g water", as: "typed" },
      { label: "dissolved, g", states: "dissolved", as: "typed", decimals: 0 },
    ],
  });
  putRow(sheet, 27, 0, ["register", "here", "paid £4"]);
  ["Ann", "Bola", "Cyn", "Dev", "Ewa"].forEach((who, index) => {
    putRow(sheet, 28 + index, 0, [who, index === 2 ? "no" : "yes", index === 2 ? "no" : "yes"]);
  });
}

/** Sheets of an evening class. */
export const nightClasses: readonly Layout[] = [
  { name: "evening class week 3, jars beside each other", language: "en", build: nightClass },
];
