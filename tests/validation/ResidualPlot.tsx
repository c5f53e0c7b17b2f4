import { ourMisses, type Comparison } from "./comparison";
import { PlotAxes } from "./PlotAxes";
import { acrossScale, crosses, dots, PLOT, strokes, upScale } from "./plotFrame";

const ROOM = 1.6; // so that the first of the ideal law's misses are in the picture too

/** What is left between computed and printed, with the uncertainty we state as grey strokes about zero. */
export function ResidualPlot({ title, source, unit, figures }: Comparison) {
  const reach =
    ROOM * Math.max(1e-6, ourMisses(figures).largest, ...figures.map(({ band }) => band ?? 0));
  const [x, y] = [acrossScale(figures.map(({ printed }) => printed)), upScale([-reach, reach])];
  const ideal = figures.flatMap(({ printed, ideal: one }) =>
    one === null ? [] : [[printed, one - printed] as const],
  );
  const inside = ideal.filter(([, miss]) => Math.abs(miss) <= reach);
  const beyond = ideal.length - inside.length;
  return (
    <>
      <svg
        viewBox={`0 0 ${PLOT.width} ${PLOT.height}`}
        role="img"
        aria-label={`${title}, ${source}: computed less printed against printed; largest miss ${ourMisses(figures).largest.toPrecision(2)} ${unit === "a_w" ? "" : "K"}.`}
      >
        <path
          class="stated"
          d={strokes(
            figures.flatMap(({ printed, band }) =>
              band === null ? [] : [[x(printed), y(-band), y(band)] as const],
            ),
          )}
        />
        <PlotAxes
          x={x}
          y={y}
          xLabel={`printed, ${unit}`}
          yLabel={`computed − printed, ${unit === "a_w" ? "a_w" : "K"}`}
        />
        <line class="same" x1={PLOT.left} x2={PLOT.width - PLOT.right} y1={y(0)} y2={y(0)} />
        <path class="ideal" d={crosses(inside.map(([at, miss]) => [x(at), y(miss)]))} />
        <path
          class="ours"
          d={dots(figures.map(({ printed, computed }) => [x(printed), y(computed - printed)]))}
        />
      </svg>
      {beyond > 0 && (
        <p class="beyond">
          {beyond} of the ideal law’s {ideal.length} crosses lie outside this picture.
        </p>
      )}
    </>
  );
}
