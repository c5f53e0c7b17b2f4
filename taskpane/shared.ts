import { NO_AIMS, type AimState } from "./aims/aimStore";
import type { OwnRange } from "./bowl/ownIngredients";
import { wasWelcomed } from "./welcome/welcomed";
import { newStore, type Store } from "./components/store";

/** What one view chooses and the others go by. */
export interface Shared {
  readonly aims: Store<AimState>;
  /** Whether the first lines have served. */
  readonly welcomed: Store<boolean>;
  /** The range of own ingredients that counts; undefined until one was found or chosen. */
  readonly ownRange: Store<OwnRange | null | undefined>;
}

export const newShared = (): Shared => ({
  aims: newStore(NO_AIMS),
  ownRange: newStore<OwnRange | null | undefined>(undefined),
  welcomed: newStore(wasWelcomed()),
});
