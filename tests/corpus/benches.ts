import { diaries } from "./benches/diary";
import { foodRooms } from "./benches/foodRoom";
import { homework } from "./benches/homework";
import { kursabende } from "./benches/kursabend";
import { problemClasses } from "./benches/problemClass";
import { stoffdateien } from "./benches/stoffdatei";
import { waegungen } from "./benches/waegung";
import type { Layout } from "./kit";

/** Sheets of people who teach or learn at a bench: solutions by hand, and the ice that follows. */
export const benches: readonly Layout[] = [
  ...homework,
  ...problemClasses,
  ...diaries,
  ...foodRooms,
  ...waegungen,
  ...stoffdateien,
  ...kursabende,
];
