import type { Random } from '../../../core/base/random.ts';

const starts = ['Ka', 'Lé', 'Mo', 'Zou', 'Tu', 'Bér', 'Ŋa', 'São ', 'Xi', 'Do', 'Ké', 'Wu', 'Ãn'];
const middles = ['lo', 'mbé', 'ra', 'vi', 'ndo', 'çu', 'lî', 'ta', 'ɓe', 'go', 'ssé', 'nu', ''];
const ends = ['ra', 'mo', 'dé', 'lvar', 'guê', 'ta', 'né', 'bo', 'rã', 'li', 'kou', 'sa', 'va'];
const given = ['Adéwa', 'Ibun', 'Orélia', 'Zaçário', 'Senna', 'Kofré', 'Dele', 'Mirã', 'Tâlo'];

const one = <T>(values: readonly T[], random: Random): T =>
  values[Math.floor(random() * values.length)]!;

/** A name of an invented place. */
export function placeName(random: Random): string {
  return one(starts, random) + one(middles, random) + one(ends, random);
}

/** A name of an invented person. */
export function personName(random: Random): string {
  return `${one(given, random)} ${placeName(random)}`;
}

/** So many different names of invented places. */
export function placeNames(count: number, random: Random): string[] {
  const names = new Set<string>();
  for (let tries = 0; names.size < count; tries += 1) {
    const name = placeName(random);
    // The syllables make some two thousand names; more are told apart as settlements are.
    names.add(tries < 3 * count ? name : `${name} ${tries}`);
  }
  return [...names];
}
