/**
 * A function of a text that remembers what it answered: sheets say the same words in many cells. At most so many
 * answers are kept, then all are forgotten, so that a sheet of a hundred thousand different words takes no more room.
 */
export function remembered<T>(most: number, answer: (text: string) => T): (text: string) => T {
  const known = new Map<string, T>();
  return (text) => {
    const before = known.get(text);
    if (before !== undefined || known.has(text)) return before as T;
    if (known.size >= most) known.clear();
    const given = answer(text);
    known.set(text, given);
    return given;
  };
}
