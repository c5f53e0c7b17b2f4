import type { NumberFormat } from "../words/numberFormat";
import { CHART } from "./curveGeometry";
import { linearScale } from "./linearScale";
import { PlotAxes } from "./PlotAxes";
import { linePath } from "./smoothPath";
import "./freezingCurve.css";

interface DiagramPoint {
  readonly solidsFraction: number;
  readonly temperatureC: number;
}

interface StateDiagramProps {
  readonly numbers: NumberFormat;
  readonly title: string;
  readonly xLabel: string;
  readonly yLabel: string;
  readonly freezing: readonly DiagramPoint[];
  readonly freezingLabel: string;
  readonly glass: readonly DiagramPoint[];
  readonly glassLabel: string;
  readonly marks: readonly (DiagramPoint & {
    readonly label: string;
    /** On which side of its point the label stands. */
    readonly side: "left" | "right";
  })[];
}

const [WARMEST_C, COLDEST_C] = [10, -60];

/** Share of dissolved matter against temperature: where ice begins, where glass begins, where the mix stands. */
export function StateDiagram(props: StateDiagramProps) {
  const x = linearScale([0, 1], [CHART.left, CHART.width - CHART.right]);
  const y = linearScale([COLDEST_C, WARMEST_C], [CHART.height - CHART.bottom, CHART.top]);
  const path = (points: readonly DiagramPoint[]) =>
    linePath(points.map((point) => [x(point.solidsFraction), y(point.temperatureC)]));
  const drawn = ({ temperatureC }: DiagramPoint) =>
    temperatureC >= COLDEST_C && temperatureC <= WARMEST_C;
  const [freezing, glass] = [props.freezing.filter(drawn), props.glass.filter(drawn)];
  // The name stands over the line's flat beginning, where nothing else is.
  const named = freezing.find(({ solidsFraction }) => solidsFraction > 0.12);
  const [firstGlass] = glass;
  return (
    <svg
      class="curve"
      viewBox={`0 0 ${CHART.width} ${CHART.height}`}
      role="img"
      aria-label={props.title}
    >
      <PlotAxes
        x={x}
        y={y}
        xFactor={100}
        xLabel={props.xLabel}
        yLabel={props.yLabel}
        numbers={props.numbers}
      />
      <path class="curve-edge" d={path(freezing)} />
      <path class="curve-glass" d={path(glass)} />
      {named !== undefined && (
        <text class="curve-name" x={CHART.left + 8} y={y(named.temperatureC) + 16}>
          {props.freezingLabel}
        </text>
      )}
      {firstGlass !== undefined && (
        <text
          class="curve-name"
          x={x(firstGlass.solidsFraction) - 6}
          y={y(firstGlass.temperatureC) - 2}
          text-anchor="end"
        >
          {props.glassLabel}
        </text>
      )}
      {props.marks.filter(drawn).map(({ label, side, solidsFraction, temperatureC }) => (
        <g
          key={label}
          class="curve-mark"
          transform={`translate(${x(solidsFraction)} ${y(temperatureC)})`}
        >
          <circle r="4" />
          <text
            x={side === "right" ? 8 : -8}
            y={side === "right" ? -4 : 10}
            text-anchor={side === "right" ? "start" : "end"}
          >
            {label}
          </text>
        </g>
      ))}
    </svg>
  );
}
