import { useEffect, useRef } from "preact/hooks";
import type { View } from "../view";
import type { Words } from "../words/words";
import "./welcome.css";

interface HelpProps {
  readonly words: Words;
  readonly view: View["key"];
}

/** What the view in front is for, and the way to the functions' pages. Esc closes it. */
export function Help({ words, view }: HelpProps) {
  const details = useRef<HTMLDetailsElement>(null);
  const close = () => {
    if (details.current !== null) details.current.open = false;
  };
  useEffect(close, [view]);
  return (
    <details
      class="help"
      ref={details}
      onKeyDown={(event) => {
        if (event.key !== "Escape" || details.current?.open !== true) return;
        event.stopPropagation();
        close();
        details.current.querySelector("summary")?.focus();
      }}
    >
      <summary aria-label={words.help.label}>?</summary>
      <div class="help-text">
        <p>{words.help.views[view]}</p>
        <p>
          <a href="help/index.html" target="_blank" rel="noreferrer">
            {words.help.functions}
          </a>
        </p>
      </div>
    </details>
  );
}
