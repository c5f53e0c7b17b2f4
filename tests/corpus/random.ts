/** A source of chance that gives the same for the same seed. */
export interface Chance {
  /** From 0 up to but not 1. */
  readonly next: () => number;
  readonly between: (from: number, to: number) => number;
  readonly whole: (from: number, to: number) => number;
  readonly pick: <T>(from: readonly T[]) => T;
}

/** Mulberry32, a small public-domain generator by T. Ettinger. */
export function chance(seed: number): Chance {
  let state = seed >>> 0;
  const next = () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let mixed = state;
    mixed = Math.imul(mixed ^ (mixed >>> 15), mixed | 1);
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4294967296;
  };
  const whole = (from: number, to: number) => from + Math.floor(next() * (to - from + 1));
  return {
    next,
    between: (from, to) => from + next() * (to - from),
    whole,
    pick: (from) => from[whole(0, from.length - 1)]!,
  };
}
