import type { Spot } from "./book";
import { buildBook, type Layout } from "./kit";
import type { MarkedBook } from "./marks";
import type { Mutation } from "./mutation";
import { chance, type Chance } from "./random";

/** A book with one mistake in it. */
export interface SeededBook {
  readonly mutation: Mutation;
  readonly variant: number;
  readonly marked: MarkedBook;
  /** The cells of which a finding has to name one; anywhere when there are none. */
  readonly spots: readonly Spot[];
}

/** A number that is the same for the same words, by FNV-1a (Fowler, Noll and Vo). */
function hash(text: string): number {
  let value = 2166136261;
  for (let index = 0; index < text.length; index += 1) {
    value = Math.imul(value ^ text.charCodeAt(index), 16777619);
  }
  return value >>> 0;
}

export const chanceFor = (...words: readonly (string | number)[]): Chance =>
  chance(hash(words.join("|")));

function shuffled<T>(random: Chance, list: readonly T[]): T[] {
  const left = [...list];
  return list.map(() => left.splice(random.whole(0, left.length - 1), 1)[0]!);
}

/** Walks the layouts for one way of making the mistake; each call goes on where the last one stopped. */
function walker(mutation: Mutation, variant: number, layouts: readonly Layout[], seed: number) {
  const { prepare, apply } = mutation.variants[variant]!;
  let attempt = 0;
  return (): SeededBook | null => {
    for (let step = 0; step < layouts.length; step += 1) {
      const layout = layouts[attempt % layouts.length]!;
      const random = chanceFor(seed, mutation.rule, layout.name, variant, attempt);
      attempt += 1;
      const marked = buildBook(layout, random, prepare);
      const spots = apply(marked, random);
      if (spots !== null) return { mutation, variant, marked, spots };
    }
    return null;
  };
}

/** So many books with one kind of mistake, over as many layouts and ways as give occasion for it. */
export function seedBooks(
  mutation: Mutation,
  layouts: readonly Layout[],
  count: number,
  seed: number,
): SeededBook[] {
  const able = layouts.filter(({ isCsv }) => isCsv !== true || mutation.inValues === true);
  const order = shuffled(chanceFor(seed, mutation.rule), able);
  const walkers = mutation.variants.map((_, variant) => walker(mutation, variant, order, seed));
  const books: SeededBook[] = [];
  for (let turn = 0; turn < count * walkers.length && books.length < count; turn += 1) {
    const book = walkers[turn % walkers.length]!();
    if (book !== null) books.push(book);
  }
  return books;
}
