/** Words for all but the water: its dry matter, or the other lines of a list. */
export const BUT_WATER =
  /(except|non|without|all but|but|au(ß|ss)er|ohne|nicht)[- ]?(the )?(water|wasser)/;
