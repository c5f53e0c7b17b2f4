/** What tells whether a label in plain words speaks of something: a pattern, or several of them together. */
export interface Words {
  readonly test: (plain: string) => boolean;
}
