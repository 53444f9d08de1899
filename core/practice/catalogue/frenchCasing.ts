import type { casingCodes } from '../rules/casing/codes.ts';
import type { FindingText } from './texts.ts';

/** Pipes and screens. */
export const frenchCasing: Readonly<Record<keyof typeof casingCodes, FindingText>> = {};
