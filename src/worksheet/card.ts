/** What is known of a substance, for a host that can open a cell as a card; other hosts show its one line. */
export interface Card {
  readonly title: string;
  readonly rows: readonly CardRow[];
}

export interface CardRow {
  /** With its unit: "molar mass, g/mol". */
  readonly label: string;
  readonly value: number | string;
}

const shown = (value: number | string): string =>
  typeof value === "number" ? String(Number(value.toPrecision(6))) : value;

/** The card in one line, for hosts without cards. */
export const cardText = ({ title, rows }: Card): string =>
  `${title} | ${rows.map(({ label, value }) => `${label}: ${shown(value)}`).join(" | ")}`;
