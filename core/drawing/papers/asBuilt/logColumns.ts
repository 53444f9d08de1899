import { again, type Kit } from '../../kit.ts';
import type { SwitchedColumn } from '../../parts/columnNames.ts';
import type { AskedWidth } from '../../parts/layColumns.ts';
import { usualWidths } from '../../parts/layColumns.ts';
import { colourWords } from '../../parts/log/colour.ts';
import { grainSteps, grainWidths } from '../../parts/log/grain.ts';
import { moistureWords } from '../../parts/log/moisture.ts';
import { rangedWidths, type Ranged } from '../../parts/log/rangedWords.ts';
import { rateSteps, rateWidths } from '../../parts/log/rate.ts';
import { sampleMarks, samplesWidths } from '../../parts/log/samples.ts';
import { sieveWords } from '../../parts/log/sieve.ts';
import { strikesWidths } from '../../parts/log/strikes.ts';
import type { SheetInput } from './sheetInput.ts';

type Logged = Pick<SheetInput, 'kit' | 'record' | 'model'>;

/** All that the columns of the log show, each part apart, so that it is known again. */
export function loggedOf({ kit, record, model }: Logged) {
  const { strata, samples, strikes } = model;
  return {
    strikes,
    samples: sampleMarks({ strata, samples }, record.samples),
    grain: grainSteps(strata),
    description: strata,
    colour: colourWords(strata),
    moisture: moistureWords(kit, strata),
    sieve: sieveWords(kit, strata),
    rate: rateSteps(strata),
  } as const satisfies Readonly<Record<SwitchedColumn, readonly unknown[]>>;
}

export type LoggedParts = ReturnType<typeof loggedOf>;

/** Narrow, so that a word may part; and wide enough for the longest word, within limits. */
function wordsWidths(kit: Kit, least: number, most: number, ranges: readonly Ranged[]): AskedWidth {
  const { word, line } = rangedWidths(kit, ranges);
  return { least, wanted: Math.min(most, Math.max(least, word, Math.min(line, word + 4))) };
}

const colourWidths = (kit: Kit, ranges: readonly Ranged[]) => wordsWidths(kit, 13.6, 20, ranges);
const moistureWidths = (kit: Kit, ranges: readonly Ranged[]) => wordsWidths(kit, 11.6, 18, ranges);
const sieveWidths = (kit: Kit, ranges: readonly Ranged[]) => wordsWidths(kit, 9, 12, ranges);

/** What each column asks for, by what it shows of a well. */
export function logWidths(
  kit: Kit,
  parts: LoggedParts,
): Readonly<Record<SwitchedColumn, AskedWidth>> {
  return {
    strikes: strikesWidths,
    samples: again(kit, 'samples widths', samplesWidths, parts.samples),
    grain: grainWidths,
    description: usualWidths.description,
    colour: again(kit, 'colour widths', colourWidths, parts.colour),
    moisture: again(kit, 'moisture widths', moistureWidths, parts.moisture),
    sieve: again(kit, 'sieve widths', sieveWidths, parts.sieve),
    rate: again(kit, 'rate widths', rateWidths, parts.rate),
  };
}
