import metrics from '../../assets/fonts/metrics.json' with { type: 'json' };
import type { Fonts } from '../../core/base/text/metrics.ts';

/** What text is measured by; the faces themselves come with the page's style sheet. */
export const fonts: Fonts = metrics;
