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
    /** On which side of its point the label stands; those on the left from the warmest to the coldest. */
    readonly side: "left" | "right";
  })[];
}

const [WARMEST_C, COLDEST_C] = [10, -60];
const LABEL_HEIGHT = 14;

/** Where labels to the left of their points stand: under the point, and under the label before. */
function leftLabels(heights: readonly number[]): readonly number[] {
  let lowest = -Infinity;
  return heights.map((height) => (lowest = Math.max(height + 10, lowest + LABEL_HEIGHT)));
}

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
  const marks = props.marks.filter(drawn);
  const left = marks.filter(({ side }) => side === "left");
  const labelY = leftLabels(left.map(({ temperatureC }) => y(temperatureC)));
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
      {marks.map((mark) => {
        const [atX, atY] = [x(mark.solidsFraction), y(mark.temperatureC)];
        const isRight = mark.side === "right";
        return (
          <g key={mark.label} class="curve-mark">
            <circle r="4" cx={atX} cy={atY} />
            <text
              x={isRight ? atX + 8 : atX - 8}
              y={isRight ? atY - 4 : labelY[left.indexOf(mark)]}
              text-anchor={isRight ? "start" : "end"}
            >
              {mark.label}
            </text>
          </g>
        );
      })}
    </svg>
  );
}
