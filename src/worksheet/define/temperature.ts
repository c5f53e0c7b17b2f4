import type { Argument } from "./argument";
import { number, optionalNumber, type NumberRange } from "./number";

interface Answered {
  readonly from: number;
  readonly to: number;
  readonly default?: number;
}

/** No thermometer of this trade shows less or more; outside the answered range we decline. */
const range = ({ from, to }: Answered): NumberRange => ({
  from: -273.15,
  to: 1000,
  answeredFrom: from,
  answeredTo: to,
  unit: "°C",
});

const described = (description: string, { from, to }: Answered) =>
  `${description} in °C, answered from ${from} to ${to}`;

/** A temperature in °C with the range that is answered. */
export function temperature(description: string, answered: Answered): Argument<number> {
  const fallback = answered.default === undefined ? undefined : { default: answered.default };
  return withDescription(
    number(description, range(answered), fallback),
    described(description, answered),
  );
}

/** A temperature that may be left out and then is null; `otherwise` says what the function does then. */
export const optionalTemperature = (description: string, answered: Answered, otherwise: string) =>
  withDescription(
    optionalNumber(description, range(answered)),
    `${described(description, answered)}; ${otherwise} when left out`,
  );

function withDescription<T>(argument: Argument<T>, description: string): Argument<T> {
  return {
    ...argument,
    parameters: (key) => argument.parameters(key).map((one) => ({ ...one, description })),
  };
}
