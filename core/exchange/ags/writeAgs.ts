import type { Identity } from '../../record/identity.ts';
import { losingOf, nameOf, type Carried, type Losing } from '../losses.ts';
import type { OutgoingWell } from '../outgoing.ts';
import type { Added, Ended, WellWriter, Writing } from '../writer.ts';
import { leftOpen } from './codes.ts';
import { typesSay, unitsSay, writtenGroups } from './groups.ts';
import { dataLine, headLines, lineOf, onOneLine } from './holeText.ts';
import { holeRows, type HoleRow } from './writeHole.ts';

/** What an AGS 4 file holds of a record. */
export const carriedByAgs: Carried = new Set([
  'schemaVersion',
  ...['number', 'programme', 'contract', 'client', 'contractor', 'driller', 'supervisor'].map(
    (name) => `identity.${name}`,
  ),
  'identity.purpose',
  ...['latitude', 'longitude', 'positionMethod', 'elevation', 'elevationDatum', 'spot'].map(
    (name) => `site.${name}`,
  ),
  ...['method', 'rig', 'startedOn', 'finishedOn', 'depthReached', 'remark'].map(
    (name) => `bore.${name}`,
  ),
  ...['from', 'to', 'diameter'].map((name) => `bore.sections[].${name}`),
  ...['from', 'to', 'material', 'qualifiers[].material', 'remarks', 'words'].map(
    (name) => `log[].${name}`,
  ),
  ...['from', 'to', 'label', 'remark'].map((name) => `samples[].${name}`),
  ...['name', 'set'].map((name) => `strings[].${name}`),
  ...['kind', 'count', 'material', 'outside', 'length', 'remark'].map(
    (name) => `strings[].components[].${name}`,
  ),
  ...['from', 'to', 'fill', 'remark'].map((name) => `annulus[].${name}`),
  ...['depth', 'at', 'rise', 'afterMinutes', 'remark'].map((name) => `strikes[].${name}`),
  ...['at', 'reading', 'datum', 'state', 'remark'].map((name) => `levels[].${name}`),
]);

/** Fields that a file has once, for all of its holes. */
const ofProject = {
  contract: 'PROJ_ID',
  programme: 'PROJ_NAME',
  client: 'PROJ_CLNT',
  supervisor: 'PROJ_ENG',
} as const;

type Project = Partial<Record<keyof typeof ofProject, string>>;

/** The first well gives the project; PROJ_ID must not be empty. */
function projectOf(identity: Identity | undefined, name: string): Project {
  const said = Object.keys(ofProject).map((key) => {
    const text = onOneLine(identity?.[key as keyof Project] ?? '');
    return [key, leftOpen.includes(text) ? '' : text] as const;
  });
  const project = Object.fromEntries(said.filter(([, text]) => text !== '')) as Project;
  return { ...project, contract: project.contract ?? name };
}

function loseProject(identity: Identity | undefined, project: Project, { lose }: Losing): void {
  for (const name of Object.keys(ofProject) as (keyof typeof ofProject)[])
    if (identity?.[name] !== project[name])
      lose(`identity.${name}`, 'A file of AGS 4 has one for all of its holes.');
}

/** A LOCA_ID that no other hole has, in the file's order. */
function freeId(wanted: string, taken: Set<string>): string {
  for (let at = 1; ; at++) {
    const id = at === 1 ? wanted : `${wanted}-${at}`;
    if (taken.has(id)) continue;
    taken.add(id);
    return id;
  }
}

const groupsOfHoles = Object.keys(writtenGroups).filter(
  (name) => !['PROJ', 'TRAN', 'ABBR', 'TYPE', 'UNIT'].includes(name),
);

/** The groups about the file itself, known when all holes are written. */
function fileGroups(
  project: Project,
  used: ReadonlySet<string>,
  abbreviations: ReadonlyMap<string, readonly [string, string, string]>,
  madeAt: string,
): Record<string, string> {
  const written = ['PROJ', 'TRAN', 'TYPE', 'UNIT', ...used];
  const headings = written.flatMap((name) => writtenGroups[name]!);
  const once = (values: readonly string[]) => [...new Set(values)].filter(Boolean).sort();
  const list = (name: string, rows: readonly (readonly string[])[]) =>
    headLines(name) + rows.map((fields) => lineOf(['DATA', ...fields])).join('') + '\r\n';
  const types = once(['X', ...headings.map(([, , type]) => type)]);
  const units = once(['m', ...headings.map(([, unit]) => unit)]);
  const projectRow = Object.fromEntries(
    Object.entries(ofProject).map(([name, heading]) => [heading, project[name as keyof Project]]),
  );
  const tran = ['1', madeAt.slice(0, 10), 'Borefolio', 'Final', 'Wells', '4.1', '-', '|', '+'];
  const coded = [...abbreviations.values()].sort((a, b) => (a.join() < b.join() ? -1 : 1));
  return {
    PROJ: `${headLines('PROJ')}${dataLine('PROJ', projectRow)}\r\n`,
    TRAN: list('TRAN', [tran]),
    ABBR: coded.length === 0 ? '' : list('ABBR', coded),
    TYPE: list(
      'TYPE',
      types.map((type) => [type, typesSay[type]!]),
    ),
    UNIT: list(
      'UNIT',
      units.map((unit) => [unit, unitsSay[unit]!]),
    ),
  };
}

/**
 * Writes wells as the holes of one AGS 4.1 file. The rules that it keeps stand in
 * docs/exchange.md; letters beyond ASCII are kept, in UTF-8, although rule 1 asks for ASCII.
 */
export function agsWriter({ name, madeAt }: Writing): WellWriter {
  const taken = new Set<string>();
  const used = new Set<string>();
  const abbreviations = new Map<string, readonly [string, string, string]>();
  let project: Project | undefined;

  function addRow({ group, fields, codes }: HoleRow): Added[] {
    for (const [heading, { code, says }] of Object.entries(codes ?? {}))
      abbreviations.set(`${heading} ${code}`, [heading, code, says]);
    const opened = used.has(group) ? [] : [{ part: group, content: headLines(group) }];
    used.add(group);
    return [...opened, { part: group, content: dataLine(group, fields) }];
  }

  function well({ record }: OutgoingWell) {
    const losing = losingOf(record, carriedByAgs, 'AGS 4');
    project ??= projectOf(record.identity, name);
    loseProject(record.identity, project, losing);
    const wanted = onOneLine(nameOf(record)) || 'well';
    const id = freeId(wanted, taken);
    if (id !== record.identity?.number)
      losing.lose('identity.number', `It goes out as "${id}", since each hole needs its own.`);
    return { added: holeRows(id, record, losing).flatMap(addRow), losses: losing.losses };
  }

  function end(): Ended {
    const about = fileGroups(project ?? projectOf(undefined, name), used, abbreviations, madeAt);
    const added = Object.entries(about).map(([part, content]) => ({ part, content }));
    const closed = groupsOfHoles
      .filter((group) => used.has(group))
      .map((group) => ({ part: group, content: '\r\n' }));
    const parts = [...Object.keys(about), ...groupsOfHoles];
    return { added: [...added, ...closed], files: [{ name: `${name}.ags`, parts }] };
  }

  return { well, end };
}
