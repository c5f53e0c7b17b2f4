import { labelAt } from "../../answers/labelAt";
import { holdsNumber, textAt } from "../cells";
import { addsTotals } from "./addsTotals";
import { saysContent } from "../contents/saysContent";
import type { FinderContext } from "../finderContext";
import { headerRole, type Role } from "../headings/headerRole";
import { answersMix } from "../mixCalls";
import { isTotalRow } from "./isTotalRow";
import { nameInList } from "../names/nameInList";
import { withoutWhen } from "../names/withoutWhen";
import { plainWords } from "../headings/plainWords";
import { columnsBeside, type Segment } from "../segments";
import { isMass, isShare } from "../amounts/unit";

/** Labels among ingredients that say something of one: no ingredients themselves. */
const SAID_OF_ONE = new Set<Role>(["molar mass", "moles", "particles", "abv", "ethanol"]);

/** Labels that end a list of ingredients, since what follows are answers. */
export const ANSWER_ROLES = new Set<Role>([
  "freezing point",
  "depression",
  "ice fraction",
  "molality",
  "temperature",
  "cryoscopic constant",
  "measured",
  "target",
  "price",
  "composition",
]);

/** Answers of a recipe; where they begin, the water and sugar among them are answers, too. */
const RESULTS = new Set<Role>(["freezing point", "depression", "ice fraction", "molality"]);

interface Items {
  readonly items: readonly number[];
  readonly totals: readonly number[];
}

/** Whether a text is the name of an ingredient, whatever stands around it. */
export const isKnownName = ({ check }: FinderContext, text: string): boolean =>
  check(nameInList(text, check).item).kind !== "unknown";

/** Tells, label by label, whether one gives the share of what the list has weighed in before: "Salt (%)" after "Salt (g)". */
function sharesOfListed({ check }: FinderContext): (text: string) => boolean {
  const weighed = new Set<string>();
  return (text) => {
    const { item, unit } = nameInList(text, check);
    if (unit !== null && isShare(unit)) return weighed.has(plainWords(item));
    if (unit !== null && isMass(unit)) weighed.add(plainWords(item));
    return false;
  };
}

/** Whether no number stands near enough right of a label to be what it says. */
const isAlone = ({ sheet }: FinderContext, row: number, column: number): boolean =>
  ![1, 2, 3].some((step) => holdsNumber(sheet, row, column + step));

/** What the words of a line are about: "Lowered by | 1.3 | K" by the unit behind the number, biscuits "after freezing" nothing. */
function roleAt({ sheet }: FinderContext, row: number, column: number): Role | null {
  const label = () => headerRole(withoutWhen(labelAt(sheet, { row, column })));
  const text = textAt(sheet, row, column);
  const role = headerRole(withoutWhen(text)) ?? label();
  const isOpen = role === null || role === "amount";
  return isOpen && saysContent(text) === "surely" ? "composition" : role;
}

/** Cuts a list at its totals and blank rows, and ends it where answers begin. */
function groupsOf(context: FinderContext, segment: Segment): Items[] {
  const { sheet } = context;
  const { rows, column } = segment;
  const groups: { items: number[]; totals: number[] }[] = [{ items: [], totals: [] }];
  const isShareOfListed = sharesOfListed(context);
  const listed: number[] = [];
  let previous: number | null = null;
  for (const row of rows) {
    const text = textAt(sheet, row, column);
    const isKnown = isKnownName(context, text);
    const role = isKnown ? null : roleAt(context, row, column);
    // "Sweet things" with nothing beside it heads a part of the list.
    const isHeading = role === "composition" && isAlone(context, row, column);
    const isAnswer = role !== null && ANSWER_ROLES.has(role) && !isHeading;
    // Between the header and the first ingredient it is said of each recipe what it shall be.
    const isAbove = isAnswer && listed.length === 0;
    if (isAbove && segment.headerRow === null && RESULTS.has(role)) break;
    if ((isAnswer && !isAbove) || isShareOfListed(text)) break;
    // Below the total "Mass of water" may be an answer of the mix.
    const isBelowTotal = groups.some(({ totals }) => totals.length > 0);
    if (isBelowTotal && answersMix(sheet, { row, column })) break;
    if (isAbove || (role !== null && SAID_OF_ONE.has(role))) {
      previous = row;
      continue;
    }
    const last = groups.at(-1);
    const isCut = (previous !== null && row > previous + 1) || (last?.totals.length ?? 0) > 0;
    previous = row;
    const isCalledSum = role === "total" || context.sumLabels.has(plainWords(text));
    const before = groups.flatMap(({ totals }) => totals);
    const isSum =
      isCalledSum ||
      isTotalRow(sheet, segment, row, listed) ||
      addsTotals(sheet, row, column, before);
    if (!isKnown && isSum) {
      last?.totals.push(row);
      continue;
    }
    listed.push(row);
    if (isCut) groups.push({ items: [row], totals: [] });
    else last?.items.push(row);
  }
  return groups;
}

/** Tells whether a row has numbers where all lines of a list have some: what has none is the heading of a part. */
function linesLike(
  { sheet }: FinderContext,
  segment: Segment,
  lines: readonly number[],
): (row: number) => boolean {
  const filled = columnsBeside(segment).filter((at) =>
    lines.every((row) => holdsNumber(sheet, row, at)),
  );
  return (row) => filled.every((at) => holdsNumber(sheet, row, at));
}

/**
 * The ingredients and totals of a list. What follows a blank row or a total belongs to it only while most of
 * its names are known: yields, rents and notes stand there too.
 */
export function itemsAndTotals(context: FinderContext, segment: Segment): Items {
  const { sheet } = context;
  const [first = { items: [], totals: [] }, ...more] = groupsOf(context, segment);
  if (more.length === 0) return first;
  const items = [...first.items];
  const totals = [...first.totals];
  const isKnown = (row: number) => isKnownName(context, textAt(sheet, row, segment.column));
  const isLine = linesLike(context, segment, items.filter(isKnown));
  for (const group of more) {
    const known = group.items.filter(isKnown);
    // The heading of a part comes before its lines.
    const start = group.items.findIndex((row) => isKnown(row) || isLine(row));
    const lines = group.items.slice(Math.max(start, 0));
    if (known.length * 2 < lines.length || (known.length === 0 && group.totals.length === 0)) break;
    items.push(...group.items);
    totals.push(...group.totals);
  }
  return { items, totals };
}
