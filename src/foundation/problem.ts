/**
 * What a user can cause. `badInput`: the cell can be fixed (`#VALUE!`). `outsideValidity`: the tool
 * declines to guess (`#N/A`). The message is one sentence naming the argument, the value and the limit.
 */
export interface Problem {
  readonly kind: "badInput" | "outsideValidity";
  readonly message: string;
}

export const badInput = (message: string): Problem => ({ kind: "badInput", message });

export const outsideValidity = (message: string): Problem => ({ kind: "outsideValidity", message });

export function isProblem(value: unknown): value is Problem {
  if (typeof value !== "object" || value === null) return false;
  const { kind, message } = value as Partial<Problem>;
  return (kind === "badInput" || kind === "outsideValidity") && typeof message === "string";
}
