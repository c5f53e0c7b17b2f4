import type { Layout } from "./kit";
import { comparisons } from "./newcomers/comparisons";
import { costings } from "./newcomers/costings";
import { demos } from "./newcomers/demos";
import { evenings } from "./newcomers/evenings";
import { labs } from "./newcomers/labs";
import { moulds } from "./newcomers/moulds";
import { percents } from "./newcomers/percents";
import { scaleups } from "./newcomers/scaleups";
import { weeks } from "./newcomers/weeks";
import { worksheets } from "./newcomers/worksheets";

/** Layouts by people who have never seen the audit. */
export const newcomers: readonly Layout[] = [
  ...[...comparisons, ...labs, ...worksheets, ...percents, ...demos],
  ...[...costings, ...scaleups, ...weeks, ...evenings, ...moulds],
];
