import type { LonLat } from '../../base/geo/shapes.ts';
import { refused, type Result } from '../../base/result.ts';

/** Why a file is not taken; caught where reading began, so that readers need not pass it on. */
export class Unfit extends Error {
  readonly code: string;

  constructor(code: string, sentence: string) {
    super(sentence);
    this.code = code;
  }

  get refusal(): Result<never> {
    return refused(this.code, this.message);
  }
}

export type JsonObject = Readonly<Record<string, unknown>>;

export function isObject(value: unknown): value is JsonObject {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}

/** A member that has to be a list. */
export function listAt(value: unknown, place: string): readonly unknown[] {
  if (Array.isArray(value)) return value as unknown[];
  throw new Unfit('notGeoJson', `${place}: a list was expected. Export the file as GeoJSON again.`);
}

/** Six decimals of a degree are a tenth of a metre: finer than any map here. */
const round = (degrees: number) => Math.round(degrees * 1e6) / 1e6;

function inDegrees(value: unknown, most: number): value is number {
  return typeof value === 'number' && Math.abs(value) <= most;
}

function positionAt(value: unknown, place: string): LonLat {
  const [longitude, latitude] = listAt(value, place);
  if (inDegrees(longitude, 180) && inDegrees(latitude, 90))
    return [round(longitude), round(latitude)];
  const shown = JSON.stringify([longitude ?? null, latitude ?? null]);
  throw new Unfit(
    'notDegrees',
    `${place}: ${shown} is not a longitude and a latitude in degrees. Export the file again in WGS 84 (EPSG:4326).`,
  );
}

const same = (a: LonLat, b: LonLat | undefined) => a[0] === b?.[0] && a[1] === b[1];

/** A line of at least two different positions; undefined where it has no length. */
export function lineAt(value: unknown, place: string): readonly LonLat[] | undefined {
  const line: LonLat[] = [];
  listAt(value, place).forEach((one, at) => {
    const position = positionAt(one, `${place}[${at}]`);
    if (!same(position, line.at(-1))) line.push(position);
  });
  return line.length < 2 ? undefined : line;
}
