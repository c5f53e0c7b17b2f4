/** Whether values count on by ones, as the lines of a list are numbered. */
export const isNumbering = (values: readonly unknown[]): boolean =>
  values.every((value, at) => value === Number(values[0]) + at);
