import { ok, type Result } from '../../core/base/result.ts';
import type { Archive } from '../archive/archive.ts';
import type { ChainCheck } from '../archive/check.ts';
import { checkPapers, type PaperCheck } from '../service/checkPapers.ts';
import type { ExitCode, World } from './command.ts';
import { openGiven } from './openGiven.ts';

interface Numbered {
  /** What people know the well by. */
  readonly number: string;
}

type Broken = ChainCheck['broken'][number] & Numbered;
type Unsound = PaperCheck['unsound'][number] & Numbered;

interface Checked {
  readonly revisions: number;
  readonly broken: readonly Broken[];
  readonly papers: number;
  readonly unsound: readonly Unsound[];
}

/** Goes through the chains and the papers, and names the wells as people do. */
function check(archive: Archive): Result<Checked> {
  const listed = archive.list();
  if (!listed.ok) return listed;
  const numbers = new Map(listed.value.map(({ id, number }) => [id, number]));
  const named = <T extends { readonly id: string }>(one: T): T & Numbered => ({
    ...one,
    number: numbers.get(one.id) || one.id,
  });
  const chains = archive.check();
  if (!chains.ok) return chains;
  const papers = checkPapers(archive);
  if (!papers.ok) return papers;
  return ok({
    revisions: chains.value.revisions,
    broken: chains.value.broken.map(named),
    papers: papers.value.papers,
    unsound: papers.value.unsound.map(named),
  });
}

function sayChains({ revisions, broken }: Checked, { print }: World): void {
  const [first, ...more] = broken;
  const chains = `${revisions} ${revisions === 1 ? 'revision' : 'revisions'}`;
  if (!first) return print(`The chains of hashes are whole: ${chains}, each as it was saved.`);
  print(`First broken link: well ${first.number}, revision ${first.revision}.`);
  print(first.sentence);
  for (const { number, revision } of more)
    print(`Broken too: well ${number}, revision ${revision}.`);
  print(`${broken.length} broken of ${chains}.`);
}

function sayPapers({ papers, unsound }: Checked, { print }: World): void {
  const [first, ...more] = unsound;
  const issued = `${papers} issued ${papers === 1 ? 'paper' : 'papers'}`;
  if (!first)
    return papers === 0 ? undefined : print(`Whole, with what seals they bear: ${issued}.`);
  print(
    `First paper that is not whole: well ${first.number}, paper ${first.paper}, ${first.fileName}.`,
  );
  print(first.sentence);
  for (const { number, paper } of more) print(`Not whole either: well ${number}, paper ${paper}.`);
  print(`${unsound.length} not whole of ${issued}.`);
}

/** Walks the chain of hashes of every well of an archive, and goes through its issued papers. */
export function verifyArchive(file: string, json: boolean, world: World): Result<ExitCode> {
  const opened = openGiven(file, world);
  if (!opened.ok) return opened;
  try {
    const checked = check(opened.value);
    if (!checked.ok) return checked;
    if (json) world.give(JSON.stringify(checked.value, undefined, 2));
    else {
      sayChains(checked.value, world);
      sayPapers(checked.value, world);
    }
    const { broken, unsound } = checked.value;
    return ok(broken.length + unsound.length === 0 ? 0 : 1);
  } finally {
    opened.value.close();
  }
}
