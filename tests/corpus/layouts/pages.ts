import { a1, addSheet, put, putRow, shown, span } from "../book";
import type { Layout } from "../kit";
import { input, page } from "../page";
import { perHundred } from "../recipes";

const freezing = { states: "freezing point", as: "formula" } as const;
const typed = { states: "freezing point", as: "typed" } as const;

/** Lists on pages with units, answers and remarks in places of their own. */
export const pages: readonly Layout[] = [
  {
    ...{ name: "units in a row under the headings", language: "en" },
    build: (kit) => {
      page(kit, addSheet(kit.marked.book, "Mix sheet"), kit.make(1)[0]!, {
        titleGap: 0,
        list: {
          columns: ["name", "amount", "price", "cost"],
          headings: { name: "Ingredient", amount: "Amount", price: "Price", cost: "Cost" },
          unitRow: { amount: "g", price: "EUR/kg", cost: "EUR" },
          ...{ unit: "g", total: "Total" },
        },
        results: { place: "right", plans: [freezing, { states: "water", as: "formula" }] },
        tell: "sentence",
        target: "Serving target",
      });
    },
  },
  {
    ...{ name: "Einheiten unter den Köpfen", language: "de" },
    build: (kit) => {
      page(kit, addSheet(kit.marked.book, "Tabelle1"), kit.make(1)[0]!, {
        ...{ top: 1, left: 2 },
        list: {
          columns: ["number", "name", "amount", "share"],
          headings: { number: "lfd. Nr.", name: "Rohstoff", amount: "Einwaage", share: "Anteil" },
          unitRow: { amount: "kg", share: "%" },
          ...{ unit: "kg", total: "Summe" },
        },
        results: {
          place: "below",
          plans: [
            { ...typed, decimals: 1 },
            { states: "ice of water", as: "typed", temperatureC: -15 },
          ],
        },
        tell: "pair",
      });
    },
  },
  {
    ...{ name: "answers on a sheet of their own", language: "en" },
    build: (kit) => {
      const sheet = addSheet(kit.marked.book, "Amounts");
      page(kit, sheet, kit.make(1)[0]!, {
        list: {
          columns: ["amount", "unit", "name", "remark"],
          headings: { amount: "How much", unit: "of what", name: "Ingredient", remark: "Notes" },
          ...{ unit: "g", total: "Total" },
        },
        tell: "sentence",
      });
      const answers = addSheet(kit.marked.book, "Answers");
      const { names, amounts } = kit.marked.recipes[0]!;
      putRow(answers, 0, 0, ["Question", "Answer", "Unit"]);
      const lines = `Amounts!${span(names)},Amounts!${span(amounts)}`;
      putRow(answers, 1, 0, [
        "Freezing point",
        shown(`=RIME.FREEZINGPOINT(${lines})`, "0.00"),
        "°C",
      ]);
      putRow(answers, 2, 0, ["Water", shown(`=RIME.COMPONENT(${lines},"water")`, "0"), "g"]);
    },
  },
  {
    ...{ name: "Ausbeute und Schwund", language: "de" },
    build: (kit) => {
      const sheet = addSheet(kit.marked.book, "Nachkalkulation");
      const label = { label: "Schwund (%)", bare: "Schwund", value: kit.random.whole(2, 6) };
      const loss = input(kit, sheet, { row: 0, column: 0 }, label);
      page(kit, sheet, kit.make(1)[0]!, {
        top: 2,
        titleGap: 0,
        list: {
          columns: ["name", "amount", "price", "cost", "allergen"],
          headings: {
            ...{ name: "Position", amount: "Einsatz (g)", price: "EK-Preis (EUR/kg)" },
            ...{ cost: "Wareneinsatz (EUR)", allergen: "Allergene" },
          },
          ...{ unit: "g", total: "Gesamt" },
        },
        results: {
          place: "below",
          plans: [freezing, { states: "alcohol", as: "typed", decimals: 1 }],
        },
        tell: "sentence",
        target: "Serviervorgabe",
      });
      const { total } = kit.marked.recipes[0]!;
      const row = sheet.cells.length + 1;
      const yielded = `=${a1(total!)}*(1-${a1(loss)}/100)`;
      put(sheet, row, 0, "Ausbeute (g)");
      put(sheet, row, 1, shown(yielded, "0"));
    },
  },
  {
    ...{ name: "per cent of the mix beside its twin", language: "en" },
    build: (kit) => {
      const sheet = addSheet(kit.marked.book, "A and B");
      kit.make(2).forEach((made, index) =>
        page(kit, sheet, perHundred(made), {
          left: index * 5,
          titleGap: 0,
          list: {
            columns: ["name", "amount"],
            headings: { name: "Component", amount: "% of mix" },
            ...{ unit: "%", total: "Sum" },
          },
          results: {
            place: "below",
            plans: [typed, { states: "sugar per 100 g water", as: "typed", decimals: 1 }],
          },
          tell: "pair",
        }),
      );
      for (const { amounts, amountLabel, total } of kit.marked.recipes) {
        const column = { spots: amounts, heading: amountLabel!, total, kind: "per cent" } as const;
        kit.marked.numberColumns.push(column);
      }
    },
  },
  {
    ...{ name: "Tagesbuch", language: "de" },
    build: (kit) => {
      const { marked, random } = kit;
      const sheet = addSheet(marked.book, "Tagesbuch");
      const heads = putRow(sheet, 0, 0, ["Uhrzeit", "Luft (°C)", "Kern (°C)", "Wer"]);
      const rows = Array.from({ length: 10 }, (_, index) =>
        putRow(sheet, 1 + index, 0, [
          ...[`${7 + index}:00`, Math.round(random.between(-24, -17))],
          ...[Math.round(random.between(-16, -12)), random.pick(["Küche", "Laden"])],
        ]),
      );
      [1, 2].forEach((column) => {
        const spots = rows.map((row) => row[column]!);
        marked.numberColumns.push({
          spots,
          heading: heads[column]!,
          total: null,
          kind: "temperature",
        });
      });
      page(kit, sheet, kit.make(1)[0]!, {
        top: 14,
        serving: ["Temperatur beim Servieren (°C)", "Temperatur beim Servieren"],
        list: {
          columns: ["name", "amount"],
          headings: { name: "Zutat", amount: "Gewicht [g]" },
          ...{ unit: "g", total: "Gesamtgewicht" },
        },
        results: {
          place: "below",
          plans: [freezing, { states: "ice of water", as: "formula", percent: "format" }],
        },
        tell: "sentence",
        target: "Ziel",
      });
    },
  },
];
