import type { coverCodes } from '../rules/cover/codes.ts';
import type { FindingText } from './texts.ts';

/** What stands between wall and casing. */
export const portugueseCover: Readonly<Record<keyof typeof coverCodes, FindingText>> = {};
