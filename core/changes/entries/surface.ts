import { entry, figure, type Entry, type Told } from '../entry.ts';

/** The pump that serves the users. */
export function pumpEntries(told: Told): Entry[] {
  const { record, sheet, words } = told;
  const { pump } = record;
  if (!pump) return [];
  const { kind, model, intake, installedOn } = pump;
  return [
    ...entry('pump', 'pump', words.what.pump, [kind && sheet.pumps[kind], model, installedOn]),
    ...entry('pump', 'intake', sheet.legend.intake, [figure(told, intake, 'm')]),
  ];
}

/** What was built over the well. */
export function headworksEntries(told: Told): Entry[] {
  const { record, words } = told;
  const { headworks } = record;
  if (!headworks) return [];
  const { padLength, padWidth, drainLength, soakaway, fence } = headworks;
  const { what } = words;
  return [
    ...entry('headworks', 'pad', what.pad, [
      figure(told, padLength, 'm'),
      figure(told, padWidth, 'm'),
    ]),
    ...entry('headworks', 'drain', what.drain, [figure(told, drainLength, 'm')]),
    ...entry('headworks', 'soakaway', what.soakaway, [soakaway]),
    ...entry('headworks', 'fence', what.fence, [fence]),
  ];
}

/** Photos, explanations, marks and notes. */
export function paperEntries({ record, sheet, words }: Told): Entry[] {
  const { photos, explanations = [], marks = [], notes } = record;
  return [
    ...entry('photos', 'count', words.what.photos, [photos && String(photos.length)]),
    ...explanations.flatMap(({ code, path, because }) =>
      entry('explanations', `${code} ${path}`, words.what.explanation, [because]),
    ),
    ...marks.flatMap(({ role, name, on }) =>
      entry('marks', role, words.of.mark.replace('{role}', sheet.roles[role]), [name, on]),
    ),
    ...entry('notes', 'notes', words.chapters.notes, [notes]),
  ];
}
