import type { LogInterval } from '../record/log.ts';
import type { GroundSample } from '../record/samples.ts';
import { roundDepth } from './range.ts';

/** What has to be the same in two samples for them to be the same ground. */
function groundOf({ material, qualifiers, grain, colour }: GroundSample): string {
  return JSON.stringify([material, qualifiers ?? [], grain, colour?.trim().toLowerCase()]);
}

/** A sample with its depths to the centimetre, from top to foot; none where it has no length. */
function placed(sample: GroundSample): GroundSample[] {
  const [a, b] = [roundDepth(sample.from), roundDepth(sample.to)];
  return a === b ? [] : [{ ...sample, from: Math.min(a, b), to: Math.max(a, b) }];
}

/** Neighbours that meet and are the same ground, run by run. */
function runsOf(samples: readonly GroundSample[]): GroundSample[][] {
  const runs: GroundSample[][] = [];
  for (const sample of samples) {
    const above = runs.at(-1)?.at(-1);
    if (above?.to === sample.from && groundOf(above) === groundOf(sample))
      runs.at(-1)?.push(sample);
    else runs.push([sample]);
  }
  return runs;
}

/** Texts once each, in their order; undefined where there are none. */
function listed(texts: readonly (string | undefined)[], between: string): string | undefined {
  const written = texts.flatMap((text) => (text?.trim() ? [text.trim()] : []));
  return written.length === 0 ? undefined : [...new Set(written)].join(between);
}

function intervalOf(run: readonly GroundSample[]): LogInterval {
  const [{ from, material, qualifiers, grain, colour }] = run as [GroundSample];
  const known = {
    material,
    qualifiers,
    grain,
    colour,
    sampled: true,
    sampleLabel: listed(
      run.map(({ label }) => label),
      ', ',
    ),
    remarks: listed(
      run.map(({ remark }) => remark),
      '; ',
    ),
  };
  const said = Object.entries(known).filter(([, value]) => value !== undefined);
  return { from, to: run.at(-1)!.to, ...Object.fromEntries(said) };
}

/**
 * The log that samples make: each run of alike neighbours is one interval. Samples come in order
 * of depth, whatever order they were written in; one from a single depth bounds no interval and is
 * left out. Gaps between samples stay gaps, since nobody saw what is there.
 */
export function logFromSamples(samples: readonly GroundSample[]): LogInterval[] {
  const ordered = samples.flatMap(placed).toSorted((a, b) => a.from - b.from || a.to - b.to);
  return runsOf(ordered).map(intervalOf);
}
