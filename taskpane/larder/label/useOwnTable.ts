import { useCallback, useEffect, useMemo, useState } from "preact/hooks";
import type { Matrix } from "../../../src/foundation/cell";
import { isProblem } from "../../../src/foundation/problem";
import { parseRangeName, rangeName } from "../../../src/workbook/address";
import { callFunction } from "../../../src/worksheet/callFunction";
import { toMatrix } from "../../bowl/cells";
import type { OwnRange } from "../../bowl/ownIngredients";
import { useOwnIngredients } from "../../bowl/useOwnIngredients";
import { useHostTask } from "../../components/useHostTask";
import type { CellBlock, SpreadsheetHost } from "../../host";
import { asText } from "../../office/cellContent";
import { freeSheetName } from "../../office/freeSheetName";
import type { PaneContext } from "../../view";
import { planRow, planSheet, type OwnPlan } from "./ownTable";
import type { OwnRow } from "./readLabel";

const MOST_COLUMNS_MORE = 40; // a label has fewer parts

/** The range, a row further down and some columns further right. */
function grown({ sheet, address }: OwnRange, host: SpreadsheetHost): Promise<CellBlock> {
  const range = parseRangeName(address) ?? { top: 0, left: 0, bottom: 0, right: 0 };
  const { bottom, right } = range;
  return host.read(
    sheet,
    rangeName({ ...range, bottom: bottom + 1, right: right + MOST_COLUMNS_MORE }),
  );
}

/** What the functions say against an own ingredient; null when they understand it. */
export function objectionTo(name: string, own: Matrix): string | null {
  const [first = []] = callFunction("COMPOSITION", name, 100, own);
  const problem = first.find((cell) => isProblem(cell));
  return isProblem(problem) ? problem.message.replace(/^items: /, "") : null;
}

const widthOf = ({ address }: OwnRange): number => {
  const range = parseRangeName(address);
  return range === null ? 0 : range.right - range.left + 1;
};

const inSheet = ({ sheet, address }: Pick<OwnRange, "sheet" | "address">): string =>
  `${sheet}!${address}`;

/** Where a row of own ingredients may go, what would be written there, and the writing, which it checks. */
export function useOwnTable(context: PaneContext, row: OwnRow) {
  const { host, words, announce } = context;
  const texts = words.larder.label;
  const { ranges, lookAgain, fault: lookFault } = useOwnIngredients(context, true);
  const { fault, run } = useHostTask(context);
  // Undefined until the user chooses; null is a new sheet.
  const [wanted, setWanted] = useState<string | null | undefined>(undefined);
  const [wishedName, setWishedName] = useState<string>(texts.sheetDefault);
  const [block, setBlock] = useState<CellBlock | null>(null);
  const [names, setNames] = useState<readonly string[]>([]);
  const [told, setTold] = useState<readonly string[]>([]);
  const target =
    wanted === null
      ? null
      : (ranges?.find((range) => inSheet(range) === wanted) ?? ranges?.[0] ?? null);
  const look = useCallback(
    () =>
      run(async () => {
        if (host === null || ranges === null) return;
        setNames((await host.readOnEachSheet("A1")).map(({ sheet }) => sheet));
        setBlock(target === null ? null : await grown(target, host));
      }),
    [host, run, ranges, target],
  );
  useEffect(() => void look(), [look]);
  const headerFor = useCallback(
    (header: string) => (texts.headers as Readonly<Record<string, string>>)[header] ?? header,
    [texts],
  );
  const plan = useMemo(() => {
    if (target === null) return planSheet(freeSheetName(wishedName, names), row, headerFor);
    return block === null ? null : planRow(block, widthOf(target), row, headerFor);
  }, [target, block, names, wishedName, row, headerFor]);

  const tell = (sentences: readonly string[]) => {
    setTold(sentences);
    announce(sentences.join(" "));
  };
  /** Writes the cells; answers where the range lies then, or null when something was left alone. */
  const put = async (place: OwnPlan, into: SpreadsheetHost) => {
    if (target !== null) {
      const left = await into.writeCells(place.edits);
      if (left.length === 0) return place;
      tell([texts.left(left.map(({ sheet, cell }) => `${sheet}!${cell}`).join(", "))]);
      return null;
    }
    const contents = place.matrix.map((cells) =>
      cells.map((cell) => (typeof cell === "string" ? asText(cell) : Number(cell))),
    );
    return { ...place, sheet: await into.addSheet(wishedName, contents) };
  };
  const write = (place: OwnPlan, name: string) =>
    run(async () => {
      if (host === null) return;
      setTold([]);
      const written = await put(place, host);
      if (written !== null) {
        const read = await host.read(written.sheet, written.address);
        const objection = objectionTo(name, toMatrix(read.values));
        const where = inSheet(written);
        tell([
          texts.written(where),
          objection === null
            ? texts.understood(name, where)
            : texts.notUnderstood(words.said(objection)),
          ...(target === null ? [] : [texts.grown(inSheet(target), where)]),
        ]);
        setWanted(where);
      }
      await lookAgain();
    });
  return {
    ranges: ranges?.map(inSheet) ?? null,
    target: target === null ? null : inSheet(target),
    choose: setWanted,
    wishedName,
    setWishedName,
    plan,
    told,
    clear: () => setTold([]),
    fault: fault ?? lookFault,
    write,
  };
}
