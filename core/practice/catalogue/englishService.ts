import type { serviceCodes } from '../rules/service/codes.ts';
import type { FindingText } from './texts.ts';

/** The site, the work and the handover. */
export const englishService: Readonly<Record<keyof typeof serviceCodes, FindingText>> = {};
