import { afar } from "./afar";
import { apart } from "./apart";
import { assorted } from "./assorted";
import { benches } from "./benches";
import { beyond } from "./beyond";
import { commuters } from "./commuters";
import { counters } from "./counters";
import { courses } from "./courses";
import { elsewhere } from "./elsewhere";
import { evenings } from "./evenings";
import { farmers } from "./farmers";
import { handwerker } from "./handwerker";
import type { Layout } from "./kit";
import { landings } from "./landings";
import { makers } from "./makers";
import { opened } from "./opened";
import { ordinary } from "./ordinary";
import { pantries } from "./pantries";
import { sidings } from "./sidings";
import { strollers } from "./strollers";
import { teachers } from "./teachers";
import { teachings } from "./teachings";
import { tenants } from "./tenants";
import { unopened } from "./unopened";
import { wayside } from "./wayside";
import { workshops } from "./workshops";

/** The last layouts that were looked at: their books are understood as they are, not yet in every restated way. */
export const lastLayouts: readonly Layout[] = [
  ...[...strollers, ...tenants, ...commuters, ...farmers, ...handwerker, ...teachers, ...makers],
  ...[...apart, ...ordinary, ...courses, ...workshops, ...assorted, ...elsewhere],
  ...[...afar, ...beyond, ...teachings, ...pantries, ...unopened, ...opened, ...wayside],
  ...[...counters, ...sidings, ...benches, ...landings, ...evenings],
];
