import { crosses, dots, strokes } from "./plotFrame";

const Mark = ({ kind, path }: { readonly kind: string; readonly path: string }) => (
  <svg class="mark" viewBox="0 0 10 10" aria-hidden="true">
    <path class={kind} d={path} />
  </svg>
);

/** What the marks of every picture mean: told apart by shape, not by colour alone. */
export const Legend = () => (
  <ul class="legend">
    <li>
      <Mark kind="ours" path={dots([[5, 5]])} /> Rimeline
    </li>
    <li>
      <Mark kind="ideal" path={crosses([[5, 5]])} /> ideal law
    </li>
    <li>
      <Mark kind="stated" path={strokes([[5, 0, 10]])} /> stated ±
    </li>
    <li>
      <Mark kind="same" path="M0 5H10" /> computed = printed
    </li>
  </ul>
);
