/**
 * Words round the materials, in small letters without accents: common practice in describing soil
 * and rock in English, French, Portuguese and the Dutch of tests/data.
 */
export const grammar = {
  /** Little of what follows: slightly sandy. */
  slightly: [
    ...['slightly', 'peu', 'legerement', 'faiblement', 'pouco', 'ligeiramente', 'levemente'],
    ...['licht', 'zwak'],
  ],
  /** Much of what follows: very sandy. */
  very: ['very', 'tres', 'fortement', 'muito', 'fortemente', 'sterk'],
  /** What follows is a second material. */
  with: [
    ...['with', 'containing', 'including', 'and', 'minor', 'some', 'occasional', 'trace'],
    ...['traces', 'interbedded', 'avec', 'et', 'contenant', 'traces', 'com', 'e', 'contendo'],
    ...['met', 'en', 'content'],
  ],
  /** What follows is joined to what stands before on equal terms. */
  and: ['and', 'et', 'e', 'en'],
  /** One of the two; nobody says which. */
  or: ['or', 'ou'],
  /** What stands before is a part of something else: clay bands, quartz veins. */
  part: [
    ...['band', 'bands', 'seam', 'seams', 'layer', 'layers', 'lens', 'lenses', 'streak', 'streaks'],
    ...['vein', 'veins', 'pocket', 'pockets', 'fragment', 'fragments', 'stringer', 'stringers'],
    ...['infill', 'infilling', 'matrix', 'lining', 'pipe', 'pack'],
  ],
  /** What stands before is a measure: gravel sized. */
  size: ['sized', 'size'],
  /** What follows is not there. */
  without: ['no', 'not', 'without', 'sans', 'pas', 'aucun', 'aucune', 'sem', 'nao', 'zonder'],
  /** Nobody is sure of what follows. */
  doubt: [
    ...['possible', 'possibly', 'probable', 'probably', 'maybe', 'perhaps'],
    ...['probablement', 'peut', 'possivel', 'possivelmente', 'provavel', 'provavelmente'],
  ],
  /** From here on another state or another depth is described. */
  end: ['recovered', 'becoming', 'recupere', 'recuperee', 'devenant', 'recuperado', 'tornando'],
} as const;

export type GrammarWord = keyof typeof grammar;
