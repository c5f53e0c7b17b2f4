import { render, screen } from "@testing-library/preact";
import { CHART, curveGeometry } from "../../../taskpane/charts/curveGeometry";
import { FreezingCurve } from "../../../taskpane/charts/FreezingCurve";
import { english } from "../../../taskpane/words/english";
import { numberFormat } from "../../../taskpane/words/numberFormat";

const dots = [0, -2, -5, -10, -20, -30].map((temperatureC) => ({
  temperatureC,
  fraction: temperatureC > -2 ? 0 : 1 + 2 / temperatureC, // the ideal law's share at a depression of 2 K
  band: 0.02,
}));

describe("the geometry of a freezing curve", () => {
  const { x, y, icePath, edgePath, bandPath } = curveGeometry(dots, -30);
  test("cold lies to the right and all ice on top", () => {
    expect(x(0)).toBe(CHART.left);
    expect(x(-30)).toBe(CHART.width - CHART.right);
    expect(y(1)).toBeLessThan(y(0));
  });
  test("the curve passes through its points and the ice is closed below it", () => {
    expect(edgePath).toMatch(new RegExp(`^M${x(0)},${y(0)}`));
    expect(icePath).toMatch(/Z$/);
  });
  test("without an uncertainty there is no band", () => {
    expect(bandPath).not.toBe("");
    const bare = dots.map((dot) => ({ ...dot, band: null }));
    expect(curveGeometry(bare, -30).bandPath).toBe("");
  });
});

describe("the picture", () => {
  test("says in words what it shows, the target included", () => {
    render(
      <FreezingCurve
        words={english}
        numbers={numberFormat("en")}
        dots={dots}
        coldestC={-30}
        basis="water"
        marks={[{ label: "serving", temperatureC: -10, fraction: 0.8 }]}
        target={{ name: "spoonable", temperatureC: -12, iceFrom: 0.7, iceTo: 0.8 }}
      />,
    );
    const name = screen
      .getByRole("img")
      .getAttribute("aria-label")!
      .replace(/[\u202f\u00a0]/g, " ");
    expect(name).toContain("At −10 °C: 80 %.");
    expect(name).toContain("“spoonable” asks for 70 % to 80 % at −12 °C.");
  });
});
