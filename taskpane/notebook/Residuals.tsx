import { ResidualPlot } from "../charts/ResidualPlot";
import { PictureFrame } from "../curves/PictureFrame";
import type { PaneContext } from "../view";
import type { NotebookEntry } from "./entry";

interface ResidualsProps {
  readonly context: PaneContext;
  readonly entries: readonly NotebookEntry[];
}

/** Measured against forecast freezing points, as a picture and as a table; nothing while there are none. */
export function Residuals({ context, entries }: ResidualsProps) {
  const { words, numbers } = context;
  const texts = words.notebook;
  const both = entries.flatMap(({ date, recipe, measuredC, forecastC, forecastBandK }) =>
    measuredC === null || forecastC === null
      ? []
      : [{ date, recipe, measured: measuredC, forecast: forecastC, band: forecastBandK }],
  );
  if (both.length === 0) return null;
  return (
    <PictureFrame
      context={context}
      title={texts.residuals}
      table={{
        head: [texts.recipe, texts.measured, texts.forecastColumn, texts.difference],
        rows: both.map(({ date, recipe, measured, forecast }) => [
          `${recipe}, ${date}`,
          numbers.fixed(measured, 2),
          numbers.fixed(forecast, 2),
          numbers.fixed(measured - forecast, 2),
        ]),
      }}
    >
      <ResidualPlot
        numbers={numbers}
        title={`${texts.residuals}: ${both.map(({ measured, forecast }) => numbers.fixed(measured - forecast, 2)).join(", ")}`}
        xLabel={texts.forecastAxis}
        yLabel={texts.residualAxis}
        dots={both}
      />
    </PictureFrame>
  );
}
