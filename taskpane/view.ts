import type { ComponentType } from "preact";
import type { SpreadsheetHost } from "./host";
import type { Shared } from "./shared";
import type { NumberFormat } from "./words/numberFormat";
import type { Words } from "./words/words";

/** Everything a view works with, handed in: so that a test can hand in its own. */
export interface PaneContext {
  /** Null outside a spreadsheet. */
  readonly host: SpreadsheetHost | null;
  readonly words: Words;
  readonly numbers: NumberFormat;
  readonly shared: Shared;
  /** Has a sentence read out by a screen reader. */
  readonly announce: (sentence: string) => void;
}

export interface ViewProps {
  readonly context: PaneContext;
  /** False while another view is in front: nothing needs to follow the selection then. */
  readonly active: boolean;
}

/** A view of the pane, one file each under views/. */
export interface View {
  readonly key: keyof Words["views"];
  readonly Content: ComponentType<ViewProps>;
}
