/** One thing that can be written into a cell. */
export interface InsertOffer {
  readonly label: string;
  readonly content: string | number;
  /** What the cell will show, when that is not the content itself. */
  readonly shows?: string;
}
