import { useCallback, useEffect, useState } from "preact/hooks";
import { normalName } from "../../src/catalogue/normalName";
import { ROWS_SEARCHED } from "../bowl/headedRanges";
import { saveFile } from "../components/saveFile";
import { useStore } from "../components/store";
import { useHostTask } from "../components/useHostTask";
import type { PaneContext } from "../view";
import type { Aim, AimBody } from "./aim";
import { ownAims } from "./aimStore";
import { aimEdits, keepAims } from "./keepAims";
import { refreshAims, takeAims } from "./lookForAims";

const same = (one: AimBody, other: AimBody) => normalName(one.name) === normalName(other.name);

/** The user's own targets, and what can be done with them. */
export function useOwnAims(context: PaneContext, active: boolean) {
  const { host, words, announce, shared } = context;
  const { aims: store } = shared;
  const texts = words.aims;
  const state = useStore(store);
  const own = ownAims(state);
  const { fault, run } = useHostTask(context);
  const [told, setTold] = useState<string | null>(null);
  const tell = (sentence: string) => {
    setTold(sentence);
    announce(sentence);
  };
  const look = useCallback(
    () =>
      run(async () => {
        if (host === null) return;
        await takeAims(host, store, await host.readWorkbook({ mostRows: ROWS_SEARCHED }));
      }),
    [host, store, run],
  );
  useEffect(() => {
    if (active) void look();
  }, [active, look]);
  const setUnkept = (unkept: readonly AimBody[]) => store.set({ ...store.now(), unkept });
  const without = (gone: readonly AimBody[]) =>
    store.now().unkept.filter((aim) => !gone.some((one) => same(one, aim)));

  const changeKept = (aim: Aim, body: AimBody) =>
    run(async () => {
      if (host === null || aim.place === null) return;
      const { sheet, address } = aim.place;
      const edits = await aimEdits(host, aim.place, aim, body);
      if (typeof edits === "string") {
        tell(texts.faults.column(edits, `${sheet}!${address}`));
        return;
      }
      const left = await host.writeCells(edits);
      await refreshAims(host, store);
      tell(
        left.length === 0
          ? texts.savedAt(body.name, `${sheet}!${address}`)
          : texts.left(left.map(({ cell }) => `${sheet}!${cell}`).join(", ")),
      );
    });
  return {
    own,
    state,
    told,
    fault,
    tell,
    /** A new target, or a changed one: on its sheet when one keeps it, else in the pane. */
    save: (body: AimBody, before: Aim | null) => {
      if (before !== null && before.place !== null) {
        void changeKept(before, body);
        return;
      }
      setUnkept([...without(before === null ? [] : [before]), body]);
      tell(texts.saved(body.name));
    },
    drop: (aim: Aim) => {
      setUnkept(without([aim]));
      tell(texts.dropped(aim.name));
    },
    /** Takes targets in; those of the user's own that are replaced on a sheet are changed there. */
    takeIn: async (bodies: readonly AimBody[]) => {
      const kept = own.filter(({ place }) => place !== null);
      for (const body of bodies) {
        const before = kept.find((aim) => same(aim, body));
        if (before !== undefined) await changeKept(before, body);
      }
      const fresh = bodies.filter((body) => !kept.some((aim) => same(aim, body)));
      setUnkept([...without(fresh), ...fresh]);
      tell(texts.imported(bodies.length));
    },
    keep: () =>
      run(async () => {
        if (host === null) return;
        const { tables, unkept } = store.now();
        const where = await keepAims(host, tables[0], unkept, texts.sheetName);
        setUnkept([]);
        tell(texts.kept(where));
        await look();
      }),
    exportAll: async () => {
      const { aimFileText } = await import(/* webpackChunkName: "aims" */ "./aimFile");
      const file = `${texts.file}.json`;
      saveFile(file, new Blob([aimFileText(own)], { type: "application/json" }));
      tell(texts.exported(file));
    },
    goTo: (sheet: string, address: string) => void run(async () => host?.goTo(sheet, address)),
  };
}
