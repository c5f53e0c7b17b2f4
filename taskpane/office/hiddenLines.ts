type Line = "row" | "column";

interface Stretch {
  readonly from: number;
  readonly count: number;
  readonly range: Excel.Range;
}

/**
 * Which rows or columns of a range are hidden. The host tells it for a whole range (all, none, or null for
 * some), so stretches of which some are hidden are halved until each is told: one request per halving.
 */
export async function hiddenLines(
  context: Excel.RequestContext,
  sheet: Excel.Worksheet,
  used: { rowIndex: number; columnIndex: number; rowCount: number; columnCount: number },
  line: Line,
): Promise<ReadonlySet<number>> {
  const property = line === "row" ? "rowHidden" : "columnHidden";
  const stretch = (from: number, count: number): Stretch => {
    const range =
      line === "row"
        ? sheet.getRangeByIndexes(from, used.columnIndex, count, 1)
        : sheet.getRangeByIndexes(used.rowIndex, from, 1, count);
    range.load(property);
    return { from, count, range };
  };
  const hidden = new Set<number>();
  const [start, total] =
    line === "row" ? [used.rowIndex, used.rowCount] : [used.columnIndex, used.columnCount];
  let open: readonly Stretch[] = [stretch(start, total)];
  while (open.length > 0) {
    await context.sync();
    const mixed: Stretch[] = [];
    for (const { from, count, range } of open) {
      const told = range[property] as boolean | null;
      if (told === true) for (let at = from; at < from + count; at += 1) hidden.add(at);
      if (told === null && count > 1) {
        const half = Math.floor(count / 2);
        mixed.push(stretch(from, half), stretch(from + half, count - half));
      }
    }
    open = mixed;
  }
  return hidden;
}
