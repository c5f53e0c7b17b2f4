import fc from "fast-check";
import { higherSaccharideCurve } from "../../src/catalogue/higherSaccharides";
import { solutes } from "../../src/catalogue/solutes";
import type { Dissolved, Solution } from "../../src/engine/dissolved";
import type { HeldWaterCurve } from "../../src/engine/heldWaterCurve";
import { freezingPointC } from "../../src/engine/freezingPoint";
import { iceShare } from "../../src/engine/iceShare";
import { liquidWaterKg } from "../../src/engine/liquidWater";
import { heldWaterKg, solutionThetaMolPerKg } from "../../src/engine/solutionTheta";
import { waterActivity } from "../../src/engine/waterActivity";
import { isProblem } from "../../src/foundation/problem";

const kitchen = solutes.filter((solute) => solute.food);

/** Every curve of the catalogue, food or not, and the higher saccharides of any syrup. */
const curves: fc.Arbitrary<HeldWaterCurve> = fc.oneof(
  { weight: 9, arbitrary: fc.constantFrom(...solutes.map(({ curve }) => curve)) },
  { weight: 1, arbitrary: fc.integer({ min: 504, max: 10000 }).map(higherSaccharideCurve) },
);

const mixes: fc.Arbitrary<Solution> = fc
  .array(fc.tuple(curves, fc.double({ min: 0, max: 0.4, noNaN: true })), {
    minLength: 1,
    maxLength: 8,
  })
  .map((parts) => ({
    waterKg: 1,
    solutes: parts.map(([curve, moles]) => ({ moles, curve })),
  }));

/** A number for comparisons; colder than is answered counts as −100. */
const coldness = (solution: Solution) => {
  const answer = freezingPointC(solution);
  return isProblem(answer) ? -100 : answer;
};

const relative = (a: number, b: number) =>
  Math.abs(a - b) / Math.max(Math.abs(a), Math.abs(b), 1e-9);

describe("any mix of the catalogue's solutes", () => {
  test("more of any solute never raises the freezing point", () => {
    fc.assert(
      fc.property(
        mixes,
        fc.nat(),
        fc.double({ min: 1, max: 1.5, noNaN: true }),
        (mix, which, factor) => {
          const chosen = which % mix.solutes.length;
          const more: Dissolved[] = mix.solutes.map((part, i) =>
            i === chosen ? { ...part, moles: part.moles * factor } : part,
          );
          expect(coldness({ ...mix, solutes: more })).toBeLessThanOrEqual(coldness(mix) + 1e-10);
        },
      ),
    );
  });

  test("only the ratio of the amounts matters", () => {
    fc.assert(
      fc.property(mixes, fc.double({ min: 1e-3, max: 1e3, noNaN: true }), (mix, scale) => {
        const scaled = {
          waterKg: mix.waterKg * scale,
          solutes: mix.solutes.map((part) => ({ ...part, moles: part.moles * scale })),
        };
        expect(relative(coldness(scaled), coldness(mix))).toBeLessThan(1e-10);
      }),
    );
  });

  test("the order of the solutes is irrelevant, and a solute may be entered in two parts", () => {
    fc.assert(
      fc.property(mixes, (mix) => {
        const reversed = { ...mix, solutes: [...mix.solutes].reverse() };
        const halves = mix.solutes.flatMap((part) => [
          { ...part, moles: part.moles / 2 },
          { ...part, moles: part.moles / 2 },
        ]);
        expect(relative(coldness(reversed), coldness(mix))).toBeLessThan(1e-10);
        expect(relative(coldness({ ...mix, solutes: halves }), coldness(mix))).toBeLessThan(1e-10);
      }),
    );
  });

  test("the share of ice grows as it gets colder and starts at the freezing point", () => {
    fc.assert(
      fc.property(mixes, fc.double({ min: -59, max: -0.1, noNaN: true }), (mix, atC) => {
        const here = iceShare(mix, null, atC);
        expect(iceShare(mix, null, atC - 1)).toBeGreaterThanOrEqual(here - 1e-12);
        const start = coldness(mix);
        if (atC > start) expect(here).toBe(0);
        else if (atC < start - 1e-9) expect(here).toBeGreaterThan(0);
        expect(here).toBeLessThanOrEqual(1);
      }),
    );
  });

  test("the solver meets its equation to 1e-12 of the water", () => {
    fc.assert(
      fc.property(
        mixes,
        fc.constantFrom<"freezing" | number>("freezing", 25, 5),
        (mix, temperature) => {
          const theta = solutionThetaMolPerKg(mix, temperature);
          if (theta === 0 || !Number.isFinite(theta)) return;
          expect(Math.abs(heldWaterKg(mix, theta, temperature) / mix.waterKg - 1)).toBeLessThan(
            1e-12,
          );
        },
      ),
      { numRuns: 500 },
    );
  });

  test("water activity lies between 0 and 1 and falls as solute is added", () => {
    fc.assert(
      fc.property(mixes, (mix) => {
        const activity = waterActivity(mix);
        const thicker = waterActivity({ ...mix, waterKg: 0.9 });
        if (isProblem(activity) || isProblem(thicker)) return;
        expect(activity).toBeLessThanOrEqual(1);
        expect(thicker).toBeLessThanOrEqual(activity);
      }),
    );
  });
});

describe("edges", () => {
  const pure: Solution = { waterKg: 1, solutes: [] };

  test("water without solute freezes at 0 °C and is all ice below", () => {
    expect(freezingPointC(pure)).toBe(0);
    expect(iceShare(pure, null, -0.01)).toBe(1);
    expect(iceShare(pure, null, 0)).toBe(0);
    expect(liquidWaterKg(pure, 3)).toBe(1);
  });

  test("no water is refused in words", () => {
    expect(freezingPointC({ waterKg: 0, solutes: [] })).toMatchObject({ kind: "badInput" });
    expect(waterActivity({ waterKg: -1, solutes: [] })).toMatchObject({ kind: "badInput" });
  });

  test("colder than −60 °C is refused in words, drier than a_w 0.34 too", () => {
    const sucrose = kitchen.find(({ name }) => name === "sucrose")!;
    const dry = { waterKg: 0.02, solutes: [{ moles: 3, curve: sucrose.curve }] };
    expect(freezingPointC(dry)).toMatchObject({ kind: "outsideValidity" });
    expect(waterActivity(dry)).toMatchObject({ kind: "outsideValidity" });
  });

  test("below Tm′ the share of ice stays where it was, and a mix whose ice line lies below Tm′ has none", () => {
    const glucose = kitchen.find(({ name }) => name === "glucose")!;
    const thin = { waterKg: 1, solutes: [{ moles: 2, curve: glucose.curve }] };
    expect(iceShare(thin, -46, -55)).toBe(iceShare(thin, -46, -46));
    const thick = { waterKg: 0.17, solutes: [{ moles: 4.6, curve: glucose.curve }] };
    expect(iceShare(thick, -46, -55)).toBe(0);
  });

  test("5,000 mixes of eight solutes are solved in well under a second", () => {
    const list = fc.sample(mixes, 5000);
    const start = performance.now();
    for (const mix of list) freezingPointC(mix);
    expect(performance.now() - start).toBeLessThan(500);
  });
});
