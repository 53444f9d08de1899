import { intervalsOf } from '../model/strata.ts';
import type { Stratum } from '../model/wellModel.ts';
import type { LogInterval } from '../record/log.ts';
import type { SheetWords } from './words/words.ts';

type Qualifier = NonNullable<LogInterval['qualifiers']>[number];

/** An adjective in the form that the principal material asks for. */
function agreeing(adjective: string, { material }: LogInterval, words: SheetWords): string {
  const form = material && words.materials[material].agrees;
  return (form && words.agreement[adjective]?.[form]) ?? adjective;
}

/** Whether a second material is said by an adjective, which stands beside the principal one. */
function isAdjective({ material }: Qualifier, words: SheetWords): boolean {
  return !words.materials[material].second.includes(' ');
}

function adjective({ material, degree }: Qualifier, of: LogInterval, words: SheetWords): string {
  const says = agreeing(words.materials[material].second, of, words);
  return [degree ? words.degrees[degree] : '', says].filter(Boolean).join(' ');
}

function loose({ material, degree }: Qualifier, words: SheetWords): string {
  const says = words.materials[material].second;
  const amount = degree === 'slightly' || degree === 'very' ? words.amounts[degree] : '{what}';
  return amount.replace('{what}', says);
}

/** `silty SAND`; where second materials follow, commas keep two of them apart. */
function principal(interval: LogInterval, words: SheetWords): string {
  if (interval.material === undefined) return '';
  const seconds = (interval.qualifiers ?? [])
    .filter((one) => isAdjective(one, words))
    .map((one) => adjective(one, interval, words));
  const noun = words.materials[interval.material].noun.toUpperCase();
  if (!words.secondsFollow) return [...seconds, noun].join(' ');
  return [noun, seconds.join(', ')].filter(Boolean).join(' ');
}

function further(interval: LogInterval, words: SheetWords): (string | undefined)[] {
  const { grain, colour, consistency, weathering, fractured, moisture } = interval;
  const agree = (says: string | undefined) => says && agreeing(says, interval, words);
  return [
    agree(grain && words.grains[grain]),
    ...(interval.qualifiers ?? [])
      .filter((one) => !isAdjective(one, words))
      .map((one) => loose(one, words)),
    colour,
    consistency,
    agree(weathering && words.weathering[weathering]),
    agree(fractured ? words.fractured : undefined),
    agree(moisture && words.moisture[moisture]),
  ];
}

/**
 * An interval in words, principal material in capitals with its second materials beside it
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
