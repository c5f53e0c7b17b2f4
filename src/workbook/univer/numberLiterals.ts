import type { Injector } from "@univerjs/core";
import { ValueNodeFactory } from "@univerjs/engine-formula";

const NUMBER = /^\s*[-+]?(?:\d+\.?\d*|\.\d+)(?:e[-+]?\d+)?\s*$/i;

/** A number of a formula as the engine recognises it: as JavaScript would write it. */
export const plainNumber = (token: string): string =>
  NUMBER.test(token) ? String(Number(token)) : token;

/** The engine takes 1.50, 007 and 1e5 for texts, since they are not written as JavaScript would. */
export function repairNumberLiterals(injector: Injector): void {
  const factory = injector.get(ValueNodeFactory);
  const create = factory.checkAndCreateNodeType.bind(factory);
  factory.checkAndCreateNodeType = (token) =>
    create(typeof token === "string" ? plainNumber(token) : token);
}
