import type { NumberFormat } from "../words/numberFormat";
import type { Words } from "../words/words";
import { CHART, curveGeometry, type CurveDot } from "./curveGeometry";
import { CurvePoint } from "./CurvePoint";
import { TargetGate } from "./TargetGate";
import "./freezingCurve.css";

/** A temperature to point out, with the share that is ice there. */
export interface CurveMark {
  readonly label: string;
  readonly temperatureC: number;
  readonly fraction: number;
}

/** The window a target asks the curve to pass through. */
export interface CurveTarget {
  readonly name: string;
  readonly temperatureC: number;
  readonly iceFrom: number;
  readonly iceTo: number;
}

interface FreezingCurveProps {
  readonly words: Words;
  readonly numbers: NumberFormat;
  readonly dots: readonly CurveDot[];
  readonly coldestC: number;
  readonly marks: readonly CurveMark[];
  readonly target: CurveTarget | null;
  readonly basis: "water" | "mix";
  /** A second recipe beside it, dashed. */
  readonly other?: { readonly name: string; readonly dots: readonly CurveDot[] };
}

type Geometry = ReturnType<typeof curveGeometry>;

function Axes({
  geometry,
  numbers,
  words,
}: { geometry: Geometry } & Pick<FreezingCurveProps, "numbers" | "words">) {
  const { x, y, temperatureTicks, fractionTicks } = geometry;
  return (
    <g class="curve-axes">
      {fractionTicks.map((tick) => (
        <g key={tick} transform={`translate(0 ${y(tick)})`}>
          <line x1={CHART.left} x2={CHART.width - CHART.right} />
          <text x={CHART.left - 5} dy="0.32em" text-anchor="end">
            {numbers.fixed(tick * 100, 0)}
          </text>
        </g>
      ))}
      {temperatureTicks.map((tick) => (
        <text key={tick} x={x(tick)} y={CHART.height - CHART.bottom + 14} text-anchor="middle">
          {numbers.fixed(tick, 0)}
        </text>
      ))}
      <text x={CHART.width - CHART.right} y={CHART.height - 4} text-anchor="end">
        {words.chart.temperatureAxis}
      </text>
      <text x={2} y={9}>
        {words.chart.iceAxis}
      </text>
    </g>
  );
}

/** What the picture shows, in words, for whoever does not see it. */
function description({ words, numbers, marks, target, other }: FreezingCurveProps): string {
  const at = marks.map(({ temperatureC, fraction }) =>
    words.chart.at(numbers.plain(temperatureC), numbers.percent(fraction)),
  );
  const gate =
    target === null
      ? []
      : [
          words.chart.gate(
            target.name,
            numbers.percent(target.iceFrom),
            numbers.percent(target.iceTo),
            numbers.plain(target.temperatureC),
          ),
        ];
  const beside = other === undefined ? [] : [words.curves.beside(other.name)];
  return [...at, ...gate, ...beside].join(" ");
}

const CLOSE_K = 3.5; // nearer than that two texts over their points would touch

/** Two marks close together lean apart: the warmer one, on the left, to the left. */
function anchorOf(mark: CurveMark, marks: readonly CurveMark[]): "start" | "middle" | "end" {
  const gaps = marks.map(({ temperatureC }) => temperatureC - mark.temperatureC);
  if (gaps.some((gap) => gap > 0 && gap < CLOSE_K)) return "start";
  return gaps.some((gap) => gap < 0 && gap > -CLOSE_K) ? "end" : "middle";
}

/** The share that is ice against temperature, with its band, marks and the window of a target. */
export function FreezingCurve(props: FreezingCurveProps) {
  const { words, numbers, dots, coldestC, marks, target, basis, other } = props;
  const geometry = curveGeometry(dots, coldestC);
  const beside = other === undefined ? null : curveGeometry(other.dots, coldestC);
  return (
    <svg
      class="curve"
      viewBox={`0 0 ${CHART.width} ${CHART.height}`}
      role="img"
      aria-label={`${words.chart.title[basis]} ${description(props)}`}
    >
      <path class="curve-ice" d={geometry.icePath} />
      {geometry.bandPath !== "" && <path class="curve-band" d={geometry.bandPath} />}
      <Axes geometry={geometry} numbers={numbers} words={words} />
      <path class="curve-edge" d={geometry.edgePath} />
      {beside !== null && (
        <>
          {beside.bandPath !== "" && <path class="curve-other-band" d={beside.bandPath} />}
          <path class="curve-other" d={beside.edgePath} />
        </>
      )}
      {target !== null && <TargetGate geometry={geometry} target={target} />}
      {marks.map((mark) => (
        <CurvePoint
          key={mark.label}
          geometry={geometry}
          mark={mark}
          text={numbers.percent(mark.fraction)}
          anchor={anchorOf(mark, marks)}
          besideGate={target !== null && Math.abs(target.temperatureC - mark.temperatureC) < 1.5}
        />
      ))}
    </svg>
  );
}
