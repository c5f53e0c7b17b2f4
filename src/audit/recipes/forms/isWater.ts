const WATER =
  /^((tap|pure|plain|distilled|deionised|deionized|reines|destilliertes|warmes|kaltes) )?(water|h2o|(leitungs|trink)?wasser)$/;

/** Whether a name is that of the water in which something is dissolved: it is no dissolved substance itself. */
export const isWater = (name: string): boolean =>
  WATER.test(name.normalize("NFKC").toLowerCase().trim());
