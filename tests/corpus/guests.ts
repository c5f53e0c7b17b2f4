import type { Layout } from "./kit";
import { evening } from "./guests/evening";
import { farm } from "./guests/farm";
import { home } from "./guests/home";
import { pastry } from "./guests/pastry";
import { science } from "./guests/science";
import { stall } from "./guests/stall";

/** What cooks, makers and teachers build for themselves. */
export const guests: readonly Layout[] = [
  ...evening,
  ...farm,
  ...pastry,
  ...science,
  ...stall,
  ...home,
];
