import type { Aim } from "../aims/aim";
import { FreezingCurve, type CurveMark } from "../charts/FreezingCurve";
import type { PaneContext } from "../view";
import { CURVE_TO_C } from "../curves/curvePoints";
import { bandOfMix } from "./bandOfMix";
import type { ColdAnswers, RecipeAnswers } from "./recipeAnswers";

interface CurveFigureProps {
  readonly context: PaneContext;
  readonly answers: RecipeAnswers;
  readonly target: Aim | null;
}

/** The freezing curve as a picture and, behind it, as a table. */
export function CurveFigure({ context, answers, target }: CurveFigureProps) {
  const { words, numbers } = context;
  const { curve, serving, storage } = answers;
  if (curve.length === 0) return null;
  const basis = target?.basis ?? "water";
  const fraction = basis === "water" ? "iceOfWater" : "iceOfMix";
  const mark = (label: string, cold: ColdAnswers): CurveMark[] => {
    const shown = cold[fraction];
    const drawn = cold.temperatureC <= 0 && cold.temperatureC >= CURVE_TO_C;
    return typeof shown === "number" && drawn
      ? [{ label, temperatureC: cold.temperatureC, fraction: shown }]
      : [];
  };
  const share = (fraction: number | null, band: number | null) =>
    fraction === null ? "–" : numbers.share(fraction, band);
  return (
    <figure class="curve-figure">
      <figcaption>{words.chart.title[basis]}</figcaption>
      <FreezingCurve
        words={words}
        numbers={numbers}
        coldestC={CURVE_TO_C}
        basis={basis}
        dots={curve.map((point) => ({
          temperatureC: point.temperatureC,
          fraction: point[fraction],
          band: basis === "water" ? point.band : null,
        }))}
        marks={[
          ...mark("serving", serving),
          ...(storage.temperatureC === serving.temperatureC ? [] : mark("storage", storage)),
        ]}
        target={target}
      />
      <details>
        <summary>{words.chart.table}</summary>
        <table>
          <thead>
            <tr>
              <th scope="col">°C</th>
              <th scope="col">{words.cold.iceOfWater}</th>
              <th scope="col">{words.cold.iceOfMix}</th>
              <th scope="col">{words.cold.unfrozenSolids}</th>
            </tr>
          </thead>
          <tbody>
            {curve
              .filter((_, index) => index % 4 === 0)
              .map((point) => (
                <tr key={point.temperatureC}>
                  <th scope="row">{numbers.plain(point.temperatureC)}</th>
                  <td>{share(point.iceOfWater, point.band)}</td>
                  <td>{share(point.iceOfMix, bandOfMix(point, point.band))}</td>
                  <td>{share(point.unfrozenSolids, null)}</td>
                </tr>
              ))}
          </tbody>
        </table>
      </details>
    </figure>
  );
}
