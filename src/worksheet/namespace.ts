/** What stands before every function's name in a cell: =RIME.FREEZINGPOINT(…) */
export const NAMESPACE = "RIME";
