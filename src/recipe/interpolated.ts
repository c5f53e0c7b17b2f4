/**
 * A printed table read between its rows by parabolas through three neighbours (a straight line through two);
 * null outside of it.
 */
export function interpolated(
  table: readonly (readonly [argument: number, value: number])[],
  at: number,
): number | null {
  const first = table[0];
  const last = table.at(-1);
  if (first === undefined || last === undefined || at < first[0] || at > last[0]) return null;
  const above = Math.max(
    table.findIndex(([argument]) => argument >= at),
    1,
  );
  const start = Math.min(Math.max(above - 1, 0), Math.max(table.length - 3, 0));
  const rows = table.slice(start, start + 3);
  return rows.reduce((sum, [argument, value]) => {
    const weight = rows.reduce(
      (product, [other]) =>
        other === argument ? product : (product * (at - other)) / (argument - other),
      1,
    );
    return sum + weight * value;
  }, 0);
}
