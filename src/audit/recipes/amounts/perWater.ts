/** Grams to 100 g of water, however it is said: "per 100 g water", "g/100 g H2O", "auf 100 g Wasser". */
export const PER_WATER =
  /(\/|\b(?:per|pro|je|auf|in|to|for|with|on|zu|für|mit)) ?(each )?100 ?k?g ?(of )?(the )?(water|wasser|h2o)\b/;
