import type fc from 'fast-check';
import type { WellRecord } from '../../core/record/schema.ts';
import { randomWell } from '../laws/randomWell.ts';

/** A well as a hurried hand writes it: few layers, no samples, long stretches of one ground. */
export const plainWell: fc.Arbitrary<WellRecord> = randomWell.map((well) => {
  const layers = well.log!;
  const [first, last] = [layers[0]!, layers.at(-1)!];
  const strings = well.strings!.map((string) => ({
    ...string,
    components: string.components.map((one) => ({ ...one, centralisers: [] })),
  }));
  const log = first === last ? [first] : [first, { ...last, from: first.to! }];
  return { ...well, log, strings, samples: [] } as WellRecord;
});
