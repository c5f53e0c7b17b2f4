import {
  a1,
  fixed,
  put,
  putRow,
  shown,
  span,
  type Content,
  type CorpusSheet,
  type Spot,
} from "./book";
import type { Kit } from "./kit";
import type { MarkedRecipe } from "./marks";
import type { MadeRecipe } from "./recipes";

export type ListColumn =
  | "number"
  | "name"
  | "amount"
  | "unit"
  | "share"
  | "scaled"
  | "price"
  | "cost"
  | "allergen"
  | "remark";

export interface ListPlan {
  readonly top: number;
  readonly left: number;
  /** From left to right. */
  readonly columns: readonly ListColumn[];
  readonly headings: Readonly<Partial<Record<ListColumn, string>>>;
  readonly unit: SheetUnit;
  /** A row of units between headings and lines, by column. */
  readonly unitRow?: Readonly<Partial<Record<ListColumn, string>>>;
  /** A number format for the amounts, e.g. one that shows the unit. */
  readonly format?: string;
  /** The label of the total row; no total without. */
  readonly total?: string;
  /** Blank rows between the last line and the total. */
  readonly gap?: number;
  /** The name of a table over headings and lines. */
  readonly table?: string;
  /** The cell by which `scaled` multiplies. */
  readonly factor?: Spot;
  /** Where prices come from; typed where there is no such formula. */
  readonly priceOf?: (name: Spot, index: number) => Content;
}

export type SheetUnit = "g" | "kg" | "%" | "fraction";

export const PER_GRAM = { g: 1, kg: 0.001, "%": 1, fraction: 0.01 } as const;

export const inUnit = (grams: number, unit: SheetUnit): number => {
  if (unit === "kg") return Math.round(grams) / 1000;
  return unit === "fraction" ? Number((grams / 100).toFixed(4)) : grams;
};

const formatted = (content: number | string, format: string | undefined): Content =>
  format === undefined ? content : shown(content, format);

const REMARKS = {
  en: ["chilled", "local", "sieved", "new bag", "check date"],
  de: ["gekühlt", "vom Hof", "gesiebt", "neuer Sack", "Datum prüfen"],
} as const;

/** One recipe, its lines one below the other under headings. */
export class List {
  private readonly first: number;
  readonly totalRow: number;
  readonly recipe: MarkedRecipe;
  readonly cells = new Map<ListColumn, Spot[]>();

  constructor(
    private readonly kit: Kit,
    private readonly sheet: CorpusSheet,
    private readonly made: MadeRecipe,
    private readonly plan: ListPlan,
  ) {
    const { top, gap = 0, total, unit } = plan;
    this.first = top + (plan.unitRow === undefined ? 1 : 2);
    this.totalRow = this.first + made.names.length + gap;
    for (const column of plan.columns) {
      const heading = plan.headings[column];
      if (heading !== undefined) put(sheet, top, this.at(column), heading);
      const rowUnit = plan.unitRow?.[column];
      if (rowUnit !== undefined) put(sheet, top + 1, this.at(column), rowUnit);
    }
    this.recipe = {
      ...{ made, unit, shared: false, results: [], targets: [], flags: [], alsoAmounts: [] },
      names: this.fill("name", (index) => made.names[index]!),
      amounts: this.fill("amount", (index) =>
        formatted(inUnit(made.grams[index]!, unit), plan.format),
      ),
      amountLabel: plan.headings.amount === undefined ? null : this.heading("amount"),
      perGram: PER_GRAM[unit],
      unitCells: this.has("unit") ? this.fill("unit", () => unit) : [],
      total: total === undefined ? null : this.sum("amount", plan.format),
    };
    if (total !== undefined) put(sheet, this.totalRow, this.at("name"), total);
    this.extras();
    const alsoAmounts = ["scaled", "share"] as const;
    this.recipe = {
      ...this.recipe,
      alsoAmounts: alsoAmounts.flatMap((column) => this.cells.get(column) ?? []),
    };
    this.asTable();
    kit.marked.recipes.push(this.recipe);
  }

  private has = (column: ListColumn): boolean => this.plan.columns.includes(column);
  private at = (column: ListColumn): number => this.plan.left + this.plan.columns.indexOf(column);
  private heading = (column: ListColumn): Spot => ({
    ...{ sheet: this.sheet.name, row: this.plan.top, column: this.at(column) },
  });

  private fill(column: ListColumn, content: (index: number) => Content): Spot[] {
    const spots = this.made.names.map((_, index) =>
      put(this.sheet, this.first + index, this.at(column), content(index)),
    );
    this.cells.set(column, spots);
    return spots;
  }

  private sum(column: ListColumn, format: string | undefined): Spot {
    const parts = this.cells.get(column)!;
    const content = formatted(`=SUM(${span(parts)})`, format);
    const spot = put(this.sheet, this.totalRow, this.at(column), content);
    this.kit.marked.sums.push({ spot, parts });
    return spot;
  }

  private formulas(
    column: ListColumn,
    fixedCells: readonly Spot[],
    content: (index: number) => Content,
  ) {
    const spots = this.fill(column, content);
    this.kit.marked.formulaColumns.push({
      spots,
      heading: this.heading(column),
      fixed: fixedCells,
    });
  }

  private extras(): void {
    const { amounts, names, total } = this.recipe;
    const { factor, unit, priceOf } = this.plan;
    const { random, language } = this.kit;
    if (this.has("number")) this.fill("number", (index) => index + 1);
    if (this.has("share") && total !== null) {
      this.formulas("share", [total], (index) =>
        shown(`=${a1(amounts[index]!)}/${fixed(total)}`, "0.0%"),
      );
      this.sum("share", "0.0%");
    }
    if (this.has("scaled") && factor !== undefined) {
      this.formulas("scaled", [factor], (index) => `=${a1(amounts[index]!)}*${fixed(factor)}`);
      if (total !== null) this.sum("scaled", undefined);
    }
    if (this.has("price")) {
      const typed = () => shown(Math.round(random.between(60, 1800)) / 100, "0.00");
      this.fill("price", (index) => priceOf?.(names[index]!, index) ?? typed());
    }
    if (this.has("cost")) {
      const prices = this.cells.get("price")!;
      const perKg = unit === "kg" ? "" : "/1000";
      this.formulas("cost", [], (index) =>
        shown(`=${a1(amounts[index]!)}*${a1(prices[index]!)}${perKg}`, "0.00"),
      );
      if (total !== null) this.sum("cost", "0.00");
    }
    if (this.has("allergen") && this.made.flagged) {
      const spots = this.fill("allergen", (index) => this.made.lines[index]!.allergen?.[language]);
      this.recipe.flags.push(...spots);
    }
    if (this.has("remark")) {
      this.fill("remark", () => (random.next() < 0.4 ? random.pick(REMARKS[language]) : undefined));
    }
  }

  private asTable(): void {
    const { table, columns, headings, top, left } = this.plan;
    if (table === undefined) return;
    this.sheet.tables.push({
      name: table,
      range: { top, left, bottom: top + this.made.names.length, right: left + columns.length - 1 },
      columns: columns.map((column) => headings[column] ?? ""),
      hasTotals: false,
    });
  }
}

/** A title, then a recipe: the usual start of a sheet. */
export function titled(
  sheet: CorpusSheet,
  row: number,
  column: number,
  words: readonly string[],
): void {
  putRow(sheet, row, column, words);
}
