import type { ComponentChildren } from "preact";
import "./notice.css";

interface NoticeProps {
  /** How much it matters; each has its own mark, so that colour is not needed to tell them apart. */
  readonly tone: "quiet" | "good" | "note" | "warning" | "trouble";
  readonly children: ComponentChildren;
}

const MARKS = { quiet: "·", good: "✓", note: "i", warning: "!", trouble: "×" } as const;

/** A sentence with a mark in front. */
export function Notice({ tone, children }: NoticeProps) {
  return (
    <div class={`notice notice-${tone}`}>
      <span class="notice-mark" aria-hidden="true">
        {MARKS[tone]}
      </span>
      <div class="notice-text">{children}</div>
    </div>
  );
}
