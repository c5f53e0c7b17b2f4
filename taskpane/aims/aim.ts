import type { ServingTarget } from "../../src/catalogue/target";
import type { Words } from "../words/words";

/** What a serving target asks for. */
export type AimBody = Pick<
  ServingTarget,
  "name" | "temperatureC" | "iceFrom" | "iceTo" | "basis" | "note"
>;

/** Where one of the user's own targets stands: a row of a table that RIME.CHECK can take. */
export interface AimPlace {
  readonly sheet: string;
  /** A1 of the table, its headers included. */
  readonly address: string;
  /** 1 for the first row below the headers. */
  readonly row: number;
}

/** A serving target of the catalogue, or one of the user's own. */
export interface Aim extends AimBody {
  /** The name in the pane's language. */
  readonly label: string;
  readonly obtained: ServingTarget["obtained"] | "own";
  /** Null for the catalogue's, and for an own one that the workbook does not keep yet. */
  readonly place: AimPlace | null;
}

export const catalogueAim = (target: ServingTarget, { language }: Words): Aim => ({
  ...target,
  label: language === "de" ? (target.aliases.de[0] ?? target.name) : target.name,
  place: null,
});

export const ownAim = (body: AimBody, place: AimPlace | null): Aim => ({
  ...body,
  label: body.name,
  obtained: "own",
  place,
});
