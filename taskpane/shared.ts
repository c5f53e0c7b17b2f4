import { NO_AIMS, type AimState } from "./aims/aimStore";
import { NO_OWN, type OwnState } from "./bowl/ownState";
import { wasWelcomed } from "./welcome/welcomed";
import { newStore, type Store } from "./components/store";

/** What one view chooses and the others go by. */
export interface Shared {
  readonly aims: Store<AimState>;
  /** Whether the first lines have served. */
  readonly welcomed: Store<boolean>;
  readonly own: Store<OwnState>;
}

export const newShared = (): Shared => ({
  aims: newStore(NO_AIMS),
  own: newStore(NO_OWN),
  welcomed: newStore(wasWelcomed()),
});
