import { known } from '../base/known.ts';
import { ok, refused, type Result } from '../base/result.ts';
import { figures, type FigureId } from './figures.ts';
import type { HeldFigure, Practice, PracticeFile } from './practice.ts';

/** The file of an id and those that it is based on, the nearest first. */
function lineOf(id: string, files: readonly PracticeFile[]): Result<PracticeFile[]> {
  const line: PracticeFile[] = [];
  let next: string | undefined = id;
  while (next !== undefined) {
    const file = files.find((one) => one.id === next);
    if (!file)
      return refused(
        'practiceUnknown',
        line.length === 0
          ? `There is no practice “${next}”. Choose one of ${files.map((one) => one.id).join(', ')}.`
          : `The practice “${line.at(-1)?.id}” is based on “${next}”, which is not there. Add that practice, or change what it is based on.`,
      );
    if (line.includes(file))
      return refused(
        'practiceRound',
        `The practice “${id}” is based on itself by way of ${line.map((one) => one.id).join(', ')}. Change what one of them is based on.`,
      );
    line.push(file);
    next = file.basedOn;
  }
  return ok(line);
}

function heldFigure(id: FigureId, line: readonly PracticeFile[]): HeldFigure | undefined {
  const setter = line.find((file) => file.figures[id] !== undefined);
  const figure = setter?.figures[id];
  if (!setter || !figure) return undefined;
  const source = line.map((file) => file.sources[figure.source]).find((one) => one !== undefined);
  return source && { value: figure.value, source, setBy: setter.id };
}

/**
 * A practice with what it takes from those that it is based on. Refused where one of them is not
 * among the files, where they go round, or where a figure or its source stands in none.
 */
export function holdPractice(id: string, files: readonly PracticeFile[]): Result<Practice> {
  const line = lineOf(id, files);
  if (!line.ok) return line;
  const [file] = line.value;
  const held = (Object.keys(figures) as FigureId[]).map(
    (figure) => [figure, heldFigure(figure, line.value)] as const,
  );
  const missing = held.filter(([, figure]) => figure === undefined).map(([figure]) => figure);
  if (missing.length > 0)
    return refused(
      'practiceIncomplete',
      `The practice “${id}” lacks ${missing.join(', ')}, or a source for it. Base it on a practice that has it, or add it.`,
    );
  return ok({
    id: file!.id,
    version: file!.version,
    name: file!.name,
    scope: file!.scope,
    basedOn: line.value.slice(1).map((one) => one.id),
    figures: Object.fromEntries(held) as Record<FigureId, HeldFigure>,
    without: line.value.flatMap((one) => one.without ?? []),
    ...known({ currency: line.value.find((one) => one.currency !== undefined)?.currency }),
    prices: Object.assign(
      {},
      ...line.value.toReversed().map((one) => one.prices),
    ) as Practice['prices'],
  });
}
