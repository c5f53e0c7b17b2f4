import { render } from "preact";
import { Pane } from "./components/Pane";
import { displayLanguage } from "./office/displayLanguage";
import { findHost } from "./office/findHost";
import { numberFormat } from "./words/numberFormat";
import { loadWords } from "./words/words";

async function start(root: HTMLElement): Promise<void> {
  const found = await findHost();
  const language = displayLanguage();
  const words = await loadWords(language);
  document.documentElement.lang = words.language;
  const outside = found.host === null ? words.outside[found.why] : null;
  const numbers = numberFormat(language);
  render(<Pane host={found.host} outside={outside} words={words} numbers={numbers} />, root);
}

const root = document.getElementById("pane");
if (root !== null) void start(root);
