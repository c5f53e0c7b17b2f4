import { unsealed } from "./unsealed";

/** Layouts to measure the audit by until another lot is held out; who mends rules has begun to look at them. */
export const heldOut = unsealed;
