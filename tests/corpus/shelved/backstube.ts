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
import { tellIn, type Voice } from "../caterers/words";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { called } from "../kitchens/hand";
import { markRecipe, say, sumOf, type Said } from "../layouts/parts";
import type { MadeRecipe } from "../recipes";
import { upTo } from "../strollers/words";
import { putList } from "./lists";
import { tableAt, thermometers, worked } from "./words";

const VOICE: Voice = {
  lead: "Kennzeichnung Theke:",
  honey: "Mit Honig, nicht für Kinder unter 12 Monaten.",
  alcohol: "Mit Alkohol, nicht für Kinder, Schwangere und Autofahrer.",
  nuts: "Mit ganzen Nüssen, Kinder unter 5 Jahren könnten ersticken.",
  egg: "Mit rohem Eigelb, Masse auf 71 °C erhitzen oder pasteurisiertes Eigelb.",
};

const DAYS = ["Fr", "Sa", "So"];

const SAID: readonly Said[] = [
  { label: "Gefrierpunkt der Masse in °C", states: "freezing point", as: "typed", decimals: 1 },
  { label: "Gefrierpunktserniedrigung in K", states: "depression", as: "formula" },
  { label: "Wasser im Ansatz in g", states: "water", as: "formula", format: "0" },
];

/** The weekend of an ice: how often each day, and what that takes. */
function weekend(kit: Kit, sheet: CorpusSheet, made: MadeRecipe): void {
  const [words, window] = putRow(sheet, 1, 0, ["Fenster (°C)", -15]) as [Spot, Spot];
  kit.marked.inputs.push({ label: words, value: window, bare: "Fenster" });
  const asked = putRow(
    sheet,
    2,
    2,
    DAYS.map(() => kit.random.whole(1, 4)),
  );
  put(sheet, 2, 0, "Ansätze am Tag");
  const list = putList(sheet, made, {
    ...{ row: 3, column: 0, name: 0, amount: 1 },
    heads: ["Zutat", "1 Ansatz (g)", ...DAYS.map((each) => `${each} (g)`), "Bestellung (g)"],
    cells: (item, grams) => [item, grams],
  });
  const { names, amounts, heads, end } = list;
  const days = asked.map((count, at) => {
    const spots = amounts.map((spot) =>
      put(sheet, spot.row, 2 + at, shown(`=${a1(spot)}*${fixed(count)}`, "0")),
    );
    worked(kit, heads[2 + at]!, spots, [count]);
    return spots;
  });
  const orders = amounts.map(({ row }) => {
    const parts = days.map((spots) => spots.find((spot) => spot.row === row)!);
    return put(sheet, row, 5, shown(`=SUM(${span(parts)})`, "0"));
  });
  worked(kit, heads[5]!, orders);
  const columns = [amounts, ...days, orders];
  const [total] = columns.map((parts, at) =>
    sumOf(kit, sheet, { row: end, column: 1 + at }, parts),
  );
  put(sheet, end, 0, "Menge gesamt");
  const cells = { names, amounts, alsoAmounts: days.flat(), total: total! };
  const recipe = markRecipe(kit, made, { ...cells, amountLabel: heads[1]!, unit: "g" });
  const frozen: Said = {
    ...{ label: "ausgefrorenes Wasser im Fenster in %", states: "ice of water", as: "formula" },
    ...{ temperatureC: -15, temperature: window, format: "0" },
  };
  const next = say(sheet, recipe, { row: end + 2, column: 0 }, [...SAID, frozen]);
  nameTarget(sheet, recipe, { row: next, column: 0, label: "Ausgabe" });
  tellIn(sheet, recipe, { row: next + 1, column: 0 }, VOICE);
}

/** Ice of a bakery's weekend and the shop's hours. */
function backstube(kit: Kit): void {
  const own = { Zucker: "Feinzucker", Salz: "Speisesalz", Honig: "Blütenhonig" };
  const mades = kit.make(3).map((made) => called(upTo(made, 2000), own));
  mades.forEach((made, at) => {
    const sheet = addSheet(kit.marked.book, `Eis ${"ABC"[at]!}`);
    putRow(sheet, 0, 0, ["Backstube, Sommerfenster", undefined, undefined, made.title]);
    weekend(kit, sheet, made);
  });
  const sheet = addSheet(kit.marked.book, "Laden");
  tableAt(sheet, { row: 0, column: 0 }, [
    ["Öffnungszeiten", "auf", "zu"],
    ["Fr", "06:30", "18:00"],
    ["Sa", "07:00", "16:00"],
    ["So", "08:00", "11:30"],
  ]);
  thermometers(
    kit,
    sheet,
    { row: 6, column: 0 },
    {
      heads: ["Gerät", "morgens °C", "abends °C"],
      lines: ["Eisvitrine", "Kuchen-TK", "TK-Schrank"],
      ...{ from: -18, to: -11 },
    },
  );
  note(kit, sheet, 12, 0, "Sonntag nur Waffel, keine Becher.");
}

/** A bakery that sells ice at weekends. */
export const backstuben: readonly Layout[] = [
  { name: "Backstube, Ansätze für Freitag bis Sonntag", language: "de", build: backstube },
];
