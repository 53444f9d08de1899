import type { FigureId } from '../practice/figures.ts';

/** Words by which people name what pipes are made of, in three languages. */
const pvc = /pvc/i;
const steel = /steel|acier|aço|aco\b|galvani[sz]|ferro|\biron\b|\bfer\b/i;
const glue = /glu|solvent|cement|coll|cola/i;
const noGlue = /thread|screw|filet|viss|rosc|weld|soud|sold|rivet|\bno\b|not |sans|sem /i;

/** Density of a pipe's material; undefined where its words tell none. */
export function densityOf(material: string | undefined): FigureId | undefined {
  if (material === undefined) return undefined;
  if (pvc.test(material)) return 'pvcKgL';
  return steel.test(material) ? 'steelKgL' : undefined;
}

/** Whether a joint is glued, by its words; undefined where they do not tell. Steel never is. */
export function isGlued(
  joint: string | undefined,
  material: string | undefined,
): boolean | undefined {
  if (densityOf(material) === 'steelKgL') return false;
  if (joint === undefined) return undefined;
  if (noGlue.test(joint)) return false;
  return glue.test(joint) ? true : undefined;
}
