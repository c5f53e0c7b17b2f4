import type { ComponentChildren } from "preact";
import { PLOT } from "./plotFrame";

interface PictureProps {
  readonly id: string;
  readonly title: string;
  /** What is to be seen in it, for those who do not see it. */
  readonly description: string;
  readonly children: ComponentChildren;
}

/** A drawing with its name and its description in words. */
export const Picture = ({ id, title, description, children }: PictureProps) => (
  <svg
    viewBox={`0 0 ${PLOT.width} ${PLOT.height}`}
    role="img"
    aria-labelledby={`${id}-title`}
    aria-describedby={`${id}-desc`}
  >
    <title id={`${id}-title`}>{title}</title>
    <desc id={`${id}-desc`}>{description}</desc>
    {children}
  </svg>
);
