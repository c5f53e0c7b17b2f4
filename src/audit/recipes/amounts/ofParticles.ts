/** Says that moles are those of the particles in solution, not of formula units. */
const OF_PARTICLES =
  /particles?|teilchen|ions|ionen|osmol|\bi\s*[·⋅*×x]\s*[nm]\b|\b[nm]\s*[·⋅*×x]\s*i\b/i;

export const isOfParticles = (label: string): boolean => OF_PARTICLES.test(label);
