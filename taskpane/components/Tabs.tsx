import type { View } from "../view";
import type { Words } from "../words/words";
import "./tabs.css";

interface TabsProps {
  readonly words: Words;
  readonly views: readonly View[];
  readonly current: View["key"];
  readonly onChoose: (key: View["key"]) => void;
}

export const tabId = (key: View["key"]): string => `tab-${key}`;
export const panelId = (key: View["key"]): string => `panel-${key}`;

/** The views' names; arrows walk them, Home and End go to the ends. */
export function Tabs({ words, views, current, onChoose }: TabsProps) {
  const goTo = (index: number) => {
    const view = views[(index + views.length) % views.length];
    if (view === undefined) return;
    onChoose(view.key);
    document.getElementById(tabId(view.key))?.focus();
  };
  const onKeyDown = (event: KeyboardEvent) => {
    const at = views.findIndex(({ key }) => key === current);
    const targets = { ArrowRight: at + 1, ArrowLeft: at - 1, Home: 0, End: views.length - 1 };
    const target = (targets as Readonly<Record<string, number>>)[event.key];
    if (target === undefined) return;
    event.preventDefault();
    goTo(target);
  };
  return (
    <div class="tabs" role="tablist" aria-label={words.tabs} onKeyDown={onKeyDown}>
      {views.map(({ key }) => (
        <button
          key={key}
          type="button"
          role="tab"
          id={tabId(key)}
          aria-controls={panelId(key)}
          aria-selected={key === current}
          tabIndex={key === current ? 0 : -1}
          title={words.views[key].about}
          onClick={() => onChoose(key)}
        >
          {words.views[key].name}
        </button>
      ))}
    </div>
  );
}
