import type { CorpusBook } from "./book";
import { buildBook } from "./kit";
import { layouts } from "./layouts";
import { mutations } from "./mutations";
import { chanceFor, seedBooks } from "./seed";

export interface FileBook {
  readonly title: string;
  readonly layout: string;
  readonly book: CorpusBook;
}

/** Books of the corpus that can be files of cells: a clean one of each layout, or of one in so many, then seeded ones. */
export function fileCorpus(seededEach: number, seed: number, oneIn = 1): FileBook[] {
  const all = layouts.filter(({ isCsv }) => isCsv !== true);
  const clean = all
    .filter((_, at) => at % oneIn === 0)
    .map((layout) => ({
      ...{ title: `clean "${layout.name}"`, layout: layout.name },
      book: buildBook(layout, chanceFor(seed, layout.name)).book,
    }));
  const seeded = mutations.flatMap((mutation) =>
    seedBooks(mutation, all, seededEach, seed).map(({ marked: { book, layout }, variant }) => ({
      ...{ title: `${mutation.rule} (way ${variant + 1}) in "${layout}"`, layout, book },
    })),
  );
  return [...clean, ...seeded];
}
