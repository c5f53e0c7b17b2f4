import fc from "fast-check";
import { iceShare } from "../../src/engine/iceShare";

const brine = {
  waterKg: 1,
  solutes: [{ moles: 0.5, curve: { form: "norrish", constant: 3 } as const }],
};

test("the share of ice lies between 0 and 1 also a hair below 0 °C", () => {
  fc.assert(
    fc.property(fc.double({ min: -1e-9, max: 0, noNaN: true }), (temperatureC) => {
      const share = iceShare(brine, null, temperatureC);
      return share >= 0 && share <= 1;
    }),
    { examples: [[-2.8421709430404014e-14]] },
  );
});
