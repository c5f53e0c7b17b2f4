import {
  ArrayValueObject,
  ErrorValueObject,
  IFormulaRuntimeService,
  type FunctionVariantType,
} from "@univerjs/engine-formula";
import type { Injector } from "@univerjs/core";

/** A cell of the grid, zero-based. */
export interface GridPlace {
  readonly unitId: string;
  readonly sheetId: string;
  readonly row: number;
  readonly column: number;
}

/** Told whenever a cell gets a sentence, or loses it (null). */
export type ReportMessage = (place: GridPlace, message: string | null) => void;

export interface ErrorMessages {
  /** The sentence that belongs to the error a cell shows now, or null. */
  readonly messageAt: (place: GridPlace) => string | null;
}

interface Sentence {
  readonly place: GridPlace;
  readonly message: string;
}

const keyOf = ({ unitId, sheetId, row, column }: GridPlace): string =>
  [unitId, sheetId, row, column].join("|");

function sentencesIn(value: FunctionVariantType, origin: GridPlace): Sentence[] {
  if (value instanceof ErrorValueObject) {
    const message = value.getErrorContent();
    return message === "" ? [] : [{ place: origin, message }];
  }
  if (!(value instanceof ArrayValueObject)) return [];
  const found: Sentence[] = [];
  value.iterator((element, row, column) => {
    if (!(element instanceof ErrorValueObject) || element.getErrorContent() === "") return;
    const place = { ...origin, row: origin.row + row, column: origin.column + column };
    found.push({ place, message: element.getErrorContent() });
  });
  return found;
}

/**
 * Keeps the sentence of every error a formula gave, since a cell of the grid has no room for it: whenever
 * the engine hands in a formula's result, its former sentences are dropped and the new ones kept.
 */
export function keepErrorMessages(injector: Injector, report: ReportMessage): ErrorMessages {
  const runtime = injector.get(IFormulaRuntimeService);
  const messages = new Map<string, string>();
  const placesOfFormula = new Map<string, GridPlace[]>();
  const handIn = runtime.setRuntimeData.bind(runtime);

  runtime.setRuntimeData = (value) => {
    const { currentUnitId: unitId, currentSubUnitId: sheetId } = runtime;
    const origin = { unitId, sheetId, row: runtime.currentRow, column: runtime.currentColumn };
    const sentences = sentencesIn(value, origin);
    for (const place of placesOfFormula.get(keyOf(origin)) ?? []) {
      messages.delete(keyOf(place));
      report(place, null);
    }
    placesOfFormula.set(
      keyOf(origin),
      sentences.map(({ place }) => place),
    );
    for (const { place, message } of sentences) {
      messages.set(keyOf(place), message);
      report(place, message);
    }
    handIn(value);
  };
  return { messageAt: (place) => messages.get(keyOf(place)) ?? null };
}
