import { intervalsOf } from '../model/strata.ts';
import type { Stratum } from '../model/wellModel.ts';
import type { LogInterval } from '../record/log.ts';
import type { SheetWords } from './words/words.ts';

type Qualifier = NonNullable<LogInterval['qualifiers']>[number];

function second({ material, degree }: Qualifier, words: SheetWords): string {
  return [degree ? words.degrees[degree] : '', words.materials[material].second]
    .filter(Boolean)
    .join(' ');
}

function principal(interval: LogInterval, words: SheetWords): string {
  if (interval.material === undefined) return '';
  const before = (interval.qualifiers ?? [])
    .filter(({ material }) => !words.materials[material].second.includes(' '))
    .map((one) => second(one, words));
  const noun = words.materials[interval.material].noun.toUpperCase();
  return [...before, noun].join(' ');
}

function further(interval: LogInterval, words: SheetWords): (string | undefined)[] {
  const { grain, colour, consistency, weathering, fractured, moisture } = interval;
  const loose = (interval.qualifiers ?? [])
    .filter(({ material }) => words.materials[material].second.includes(' '))
    .map((one) => second(one, words));
  return [
    grain && words.grains[grain],
    ...loose,
    colour,
    consistency,
    weathering && words.weathering[weathering],
    fractured ? words.fractured : undefined,
    moisture && words.moisture[moisture],
  ];
}

/**
 * An interval in words, principal material in capitals with its second materials before it
 * (trade practice). A description that somebody else wrote is printed as it was written.
 */
export function describe(interval: LogInterval, words: SheetWords): string {
  if (interval.words !== undefined && interval.words !== '') return interval.words;
  const seen = [principal(interval, words), ...further(interval, words)].filter(Boolean).join(', ');
  const sentences = [seen, interval.remarks].filter(Boolean);
  return sentences.length === 0 ? words.noDescription : sentences.join('. ');
}

/** All that the log says of a stratum: several rows of one range follow each other. */
export function describeStratum(stratum: Stratum, words: SheetWords): string {
  const said = intervalsOf(stratum).map((interval) => describe(interval, words));
  return [...new Set(said)].join('; ');
}
