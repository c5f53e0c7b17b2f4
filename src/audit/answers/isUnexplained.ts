import type { Finding } from "../finding";

/** Whether a wrong answer is told without what makes it come out so; what a label has in quotes explains nothing. */
export const isUnexplained = ({ message }: Finding): boolean =>
  !/ comes out | ideal law /.test(message.replaceAll(/"[^"]*"/g, ""));
