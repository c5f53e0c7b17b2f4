/** A refusal of our own that reaches the user like one of the host: by its code. */
export class HostFault extends Error {
  constructor(
    readonly code: string,
    message: string,
  ) {
    super(message);
  }
}

export const tooLarge = (cells: number, most: number): HostFault =>
  new HostFault("TooManyCells", `The block has ${cells} cells; at most ${most} are read at once.`);
