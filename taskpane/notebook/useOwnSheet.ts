import { useState } from "preact/hooks";
import type { Matrix } from "../../src/foundation/cell";
import { useHostTask } from "../components/useHostTask";
import { asText } from "../office/cellContent";
import type { PaneContext } from "../view";
import { mergeOwn } from "./mergeOwn";

/** Writes own ingredients, with those there already are, to a new sheet; what was there stays. */
export function useOwnSheet(context: PaneContext, own: Matrix | null) {
  const { host, words, announce } = context;
  const { fault, run } = useHostTask(context);
  const [told, setTold] = useState<string | null>(null);
  const write = (rows: Matrix) =>
    run(async () => {
      if (host === null) return;
      const contents = mergeOwn(own, rows).map((row) =>
        row.map((cell) =>
          typeof cell === "string" ? asText(cell) : typeof cell === "number" ? cell : "",
        ),
      );
      const sentence = words.notebook.applied(
        await host.addSheet(words.notebook.ownSheet, contents),
      );
      setTold(sentence);
      announce(sentence);
    });
  return { write, outcome: fault ?? told };
}
