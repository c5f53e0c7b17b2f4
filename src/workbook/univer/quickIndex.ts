import { CELL_INVERTED_INDEX_CACHE } from "@univerjs/engine-formula";

let repaired = false;

type IndexedValue = Parameters<typeof CELL_INVERTED_INDEX_CACHE.set>[3];

/**
 * The engine keeps an index of the values in each column; to put in a fresh result it first looks through
 * all values of the column for the row's former one, so that filling n rows takes n² steps. Whoever
 * remembers the former value needs no search.
 */
export function quickenIndex(): void {
  if (repaired) return;
  repaired = true;
  const index = CELL_INVERTED_INDEX_CACHE;
  const formerByColumn = new Map<string, Map<number, IndexedValue>>();
  const set = index.set.bind(index);
  const clear = index.clear.bind(index);

  index.set = (unitId, sheetId, column, value, row, replaces = false) => {
    const takesIt = index.shouldContinueBuildingCache(unitId, sheetId, column, row);
    if (!takesIt && !replaces) return;
    const key = `${unitId}|${sheetId}|${column}`;
    const formers = formerByColumn.get(key) ?? new Map<number, IndexedValue>();
    formerByColumn.set(key, formers);
    const former = formers.get(row);
    const isNew = !formers.has(row);
    if (!isNew && Object.is(former, value)) return;
    formers.set(row, value);
    const positions = index.getCellValuePositions(unitId, sheetId, column);
    const isFree = isNew || positions?.get(former as never)?.delete(row) === true;
    set(unitId, sheetId, column, value, row, replaces && !(isFree && takesIt));
  };
  index.clear = () => {
    formerByColumn.clear();
    clear();
  };
}
