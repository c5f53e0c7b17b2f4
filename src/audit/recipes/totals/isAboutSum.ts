/** A number far from the sum is another thing: a batch that is wanted, the weight of one piece. */
const [LEAST, MOST] = [0.75, 1.3];

/** Whether a number may be meant as the sum of some amounts, right or not. */
export const isAboutSum = (value: number, sum: number): boolean =>
  value / sum >= LEAST && value / sum <= MOST;
