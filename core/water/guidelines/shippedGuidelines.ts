import type { GuidelineFile } from './guidelineSet.ts';
import who2022 from './who2022.json' with { type: 'json' };

/** The sets of guideline values that come with the program. */
export const shippedGuidelines = [who2022] as readonly GuidelineFile[];
