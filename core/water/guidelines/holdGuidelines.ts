import { known } from '../../base/known.ts';
import { ok, refused, type Result } from '../../base/result.ts';
import type { Source } from '../../practice/practice.ts';
import type {
  GuidelineFile,
  GuidelineSet,
  GuidelineValue,
  HeldParameter,
  HeldValue,
  ParameterId,
  PartOfParameter,
} from './guidelineSet.ts';

type Line = readonly GuidelineFile[];

/** The file of an id and those that it is based on, the nearest first. */
function lineOf(id: string, files: Line): Result<Line> {
  const line: GuidelineFile[] = [];
  let next: string | undefined = id;
  while (next !== undefined) {
    const file = files.find((one) => one.id === next);
    if (!file)
      return refused(
        'guidelinesUnknown',
        line.length === 0
          ? `There is no set of guideline values “${next}”. Choose one of ${files.map((one) => one.id).join(', ')}.`
          : `The set “${line.at(-1)?.id}” is based on “${next}”, which is not there. Add that set, or change what it is based on.`,
      );
    if (line.includes(file))
      return refused(
        'guidelinesRound',
        `The set “${id}” is based on itself by way of ${line.map((one) => one.id).join(', ')}. Change what one of them is based on.`,
      );
    line.push(file);
    next = file.basedOn;
  }
  return ok(line);
}

function sourceOf(key: string, line: Line): Source | undefined {
  return line.map(({ sources }) => sources[key]).find((one) => one !== undefined);
}

/** The nearest file that says this of a parameter. */
function nearest<K extends keyof PartOfParameter>(
  id: ParameterId,
  key: K,
  line: Line,
): PartOfParameter[K] | undefined {
  return line.map(({ parameters }) => parameters[id]?.[key]).find((one) => one !== undefined);
}

/**
 * What a figure of a file is told in: its own unit, else the one that the parameter has in that
 * file or in those under it. A set that changes a parameter's unit leaves the figures of the
 * others in theirs.
 */
function toldIn({ unit, as }: Pick<GuidelineValue, 'unit' | 'as'>, id: ParameterId, line: Line) {
  const told = unit ?? nearest(id, 'unit', line) ?? '1';
  return { unit: told, ...known({ as: as ?? nearest(id, 'as', line) }) };
}

/** Each value by its key, from the nearest set that gives it. */
function valuesOf(id: ParameterId, line: Line): HeldValue[] {
  const keys = line
    .toReversed()
    .flatMap(({ parameters }) => Object.keys(parameters[id]?.values ?? {}));
  return [...new Set(keys)]
    .filter((key) => !isWithout(`${id}.${key}`, key, id, line))
    .flatMap((key) => {
      const at = line.findIndex(({ parameters }) => parameters[id]?.values?.[key] !== undefined);
      const file = line[at]!;
      const value = file.parameters[id]!.values![key]!;
      const source = sourceOf(value.source, line);
      if (!source) return [];
      return [{ ...value, ...toldIn(value, id, line.slice(at)), key, source, setBy: file.id }];
    });
}

/** A value is left out where a nearer set does so than the nearest that gives it. */
function isWithout(name: string, key: string, id: ParameterId, line: Line): boolean {
  const left = line.findIndex(({ without }) => without?.includes(name));
  const given = line.findIndex(({ parameters }) => parameters[id]?.values?.[key] !== undefined);
  return left >= 0 && left <= given;
}

function heldParameter(id: ParameterId, line: Line): HeldParameter | undefined {
  const names = nearest(id, 'names', line);
  const unit = nearest(id, 'unit', line);
  if (!names || unit === undefined) return undefined;
  const bands = nearest(id, 'bands', line);
  const before = nearest(id, 'beforeHandover', line);
  const [bandSource, beforeSource] = [bands, before].map(
    (part) => part && sourceOf(part.source, line),
  );
  return {
    id,
    names,
    aliases: [...new Set(line.flatMap(({ parameters }) => parameters[id]?.aliases ?? []))],
    unit,
    ...known({ as: nearest(id, 'as', line) }),
    values: valuesOf(id, line),
    ...(bands && bandSource ? { bands: { source: bandSource, list: bands.list } } : {}),
    ...(before && beforeSource
      ? { beforeHandover: { source: beforeSource, instead: before.instead ?? [] } }
      : {}),
  };
}

/** What a set names as a source and nobody in its line explains. */
function sourceless(line: Line): string[] {
  return line.flatMap(({ parameters }) =>
    Object.entries(parameters).flatMap(([id, { values = {}, bands, beforeHandover }]) =>
      [
        ...Object.entries(values).map(([key, { source }]) => [`${id}.${key}`, source] as const),
        ...[bands, beforeHandover].flatMap((part) => (part ? [[id, part.source] as const] : [])),
      ]
        .filter(([, source]) => sourceOf(source, line) === undefined)
        .map(([name]) => name),
    ),
  );
}

/**
 * A set of guideline values with what it takes from those that it is based on: parameters in the
 * order of the set at the bottom, new ones after. Refused where one of them is not among the
 * files, where they go round, or where a parameter lacks its names, its unit or a source.
 */
export function holdGuidelines(id: string, files: Line): Result<GuidelineSet> {
  const found = lineOf(id, files);
  if (!found.ok) return found;
  const line = found.value;
  const [file] = line;
  const ids = [...new Set(line.toReversed().flatMap(({ parameters }) => Object.keys(parameters)))];
  const asked = ids.filter((one) => !line.some(({ without }) => without?.includes(one)));
  const held = asked.map((one) => [one, heldParameter(one, line)] as const);
  const incomplete = [
    ...held.filter(([, parameter]) => !parameter).map(([one]) => one),
    ...sourceless(line),
  ];
  if (incomplete.length > 0)
    return refused(
      'guidelinesIncomplete',
      `The set “${id}” lacks names, a unit or a source for ${incomplete.join(', ')}. Base it on a set that has them, or add them.`,
    );
  const edition = line.map((one) => one.edition).find((one) => one !== undefined);
  return ok({
    id: file!.id,
    version: file!.version,
    name: file!.name,
    ...known({ edition }),
    basedOn: line.slice(1).map((one) => one.id),
    parameters: held.flatMap(([, parameter]) => parameter ?? []),
  });
}
