/**
 * A root of a continuous function between two arguments at which it has opposite signs, or null when it
 * has not. Bisection with an inverse quadratic step where that is safe.
 * @source chandrupatla1997
 * @param tolerance largest error of the argument
 */
export function rootBetween(
  valueAt: (argument: number) => number,
  from: number,
  to: number,
  tolerance = 1e-12,
): number | null {
  let [a, b, c] = [to, from, from];
  let [fa, fb, fc] = [valueAt(to), valueAt(from), 0];
  fc = fb;
  if (fa === 0) return a;
  if (fb === 0) return b;
  if (!(fa * fb < 0)) return null;
  let share = 0.5;
  for (let step = 0; step < 200; step++) {
    const next = a + share * (b - a);
    const value = valueAt(next);
    if (Math.sign(value) === Math.sign(fa)) [c, fc] = [a, fa];
    else [c, fc, b, fb] = [b, fb, a, fa];
    [a, fa] = [next, value];
    const nearest = Math.abs(fa) < Math.abs(fb) ? a : b;
    const narrowest = (2 * Number.EPSILON * Math.abs(nearest) + tolerance) / Math.abs(b - c);
    if (narrowest > 0.5 || fa === 0 || fb === 0) return nearest;
    share = quadraticShare(a, b, c, fa, fb, fc);
    share = Math.min(Math.max(share, narrowest), 1 - narrowest);
  }
  return a;
}

function quadraticShare(
  a: number,
  b: number,
  c: number,
  fa: number,
  fb: number,
  fc: number,
): number {
  const xi = (a - b) / (c - b);
  const phi = (fa - fb) / (fc - fb);
  const safe = phi * phi < xi && (1 - phi) * (1 - phi) < 1 - xi;
  if (!safe) return 0.5;
  return (
    (fa / (fb - fa)) * (fc / (fb - fc)) + (((c - a) / (b - a)) * fa * fb) / ((fc - fa) * (fc - fb))
  );
}
