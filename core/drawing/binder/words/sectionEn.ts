import type { SectionWords } from './section.ts';

export const sectionEnglish: SectionWords = {
  title: 'Section {n}',
  scales:
    'Scale down 1 : {down}, along 1 : {across}: heights are drawn {times} times too large against distances.',
  datum: 'Ground by the elevations on record, above: {datum}.',
  noDatum: 'datum not recorded',
  datums: 'The elevations have several datums: heights of one against another may be wrong.',
  flat: 'No elevation is on record: every ground stands at one height, and nothing is told of slopes.',
  assumed: 'Elevation not recorded, drawn at the ground of the nearest well, dashed: {wells}.',
  left: 'Not drawn, for want of a position: {wells}.',
  absent: 'Chosen for the section but not in this binder: {n}.',
  joined:
    'Dashed lines between wells were asked for by a person: they are an interpretation, not a measurement.',
  notJoined: 'Nothing is drawn between wells: what lies there is not known.',
  none: 'None of the chosen wells has a position on record.',
  heads: { elevation: 'Elevation m', depth: 'Depth m', along: 'Along m', ground: 'Ground m' },
};
