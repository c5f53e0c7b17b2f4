import type { ServingTarget } from "../../catalogue/target";

/** What a serving target asks of a mix: how much of it is ice at a temperature, of what. */
export type WantedIce = Pick<ServingTarget, "temperatureC" | "iceFrom" | "iceTo" | "basis">;
