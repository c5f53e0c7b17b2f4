import { useCallback, useMemo, useState } from "preact/hooks";
import type { SpreadsheetHost } from "../host";
import { Help } from "../welcome/Help";
import { newShared } from "../shared";
import type { PaneContext, View, ViewProps } from "../view";
import { views } from "../views";
import type { NumberFormat } from "../words/numberFormat";
import type { Words } from "../words/words";
import { Mark } from "./Mark";
import { Notice } from "./Notice";
import { panelId, tabId, Tabs } from "./Tabs";
import "./base.css";

interface PaneProps {
  readonly host: SpreadsheetHost | null;
  /** Why there is no spreadsheet, when there is none. */
  readonly outside: string | null;
  readonly words: Words;
  readonly numbers: NumberFormat;
}

/** A view that is drawn anew only when something of it changes, not whenever another comes to the front. */
function Kept({ Content, context, active }: Pick<View, "Content"> & ViewProps) {
  return useMemo(() => <Content context={context} active={active} />, [Content, context, active]);
}

/** The whole pane: tabs, the views behind them, and the line a screen reader reads out. */
export function Pane({ host, outside, words, numbers }: PaneProps) {
  const [current, setCurrent] = useState<View["key"]>(host === null ? "larder" : "bowl");
  // A view is built when it is first opened and then kept, so that going to and fro loses nothing.
  const [opened, setOpened] = useState<readonly View["key"][]>([current]);
  const [said, setSaid] = useState({ sentence: "", times: 0 });
  const announce = useCallback(
    (sentence: string) => setSaid(({ times }) => ({ sentence, times: times + 1 })),
    [],
  );
  const shared = useMemo(newShared, []);
  const context: PaneContext = useMemo(
    () => ({ host, words, numbers, shared, announce }),
    [host, words, numbers, shared, announce],
  );
  const choose = (key: View["key"]) => {
    setCurrent(key);
    if (!opened.includes(key)) setOpened([...opened, key]);
  };
  return (
    <>
      <header class="masthead">
        <div class="masthead-top">
          <h1>
            <Mark />
            Rimeline
          </h1>
          <Help words={words} view={current} />
        </div>
        <Tabs words={words} views={views} current={current} onChoose={choose} />
      </header>
      <main>
        {outside !== null && <Notice tone="warning">{outside}</Notice>}
        {views.map(({ key, Content }) => (
          <div
            key={key}
            role="tabpanel"
            id={panelId(key)}
            aria-labelledby={tabId(key)}
            hidden={key !== current}
          >
            {opened.includes(key) && (
              <Kept Content={Content} context={context} active={key === current} />
            )}
          </div>
        ))}
      </main>
      <p class="unseen" aria-live="polite">
        {/* The same sentence twice is to be read twice. */}
        <span key={said.times}>{said.sentence}</span>
      </p>
    </>
  );
}
