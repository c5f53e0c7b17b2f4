import type { Problem } from "../foundation/problem";

/** A problem of the engine, which knows no cells, as the sentence on an argument. */
export const ofArgument = (argument: string, { kind, message }: Problem): Problem => ({
  kind,
  message: `${argument}: ${message.charAt(0).toLowerCase()}${message.slice(1)}`,
});
