import type { Finding } from '../base/finding.ts';
import type { DepthM } from '../base/units.ts';
import type { Bore, BoreSection } from '../record/bore.ts';
import { found, type Resolved } from './findings.ts';
import { cut, gapsIn, layFlat, overlapsOf, roundDepth, type Range } from './range.ts';
import { readRanges, type Placed } from './readRanges.ts';
import type { BoreModel, BoreSectionModel } from './wellModel.ts';

/** Metres: closer than a tape tells apart in a hole. */
export const tapeToleranceM = 0.05;

type Section = Placed<BoreSection>;

function hasDiameter({ entry }: Section): boolean {
  return entry.diameter > 0;
}

function checkSection(section: Section): Finding[] {
  const findings: Finding[] = [];
  if (section.fromM < 0)
    findings.push(
      found('bore.aboveGround', `${section.path}.from`, {}, { fromM: section.fromM, toM: 0 }),
    );
  if (!hasDiameter(section))
    findings.push(found('bore.noDiameter', `${section.path}.diameter`, {}, section));
  return findings;
}

/**
 * The sections, sorted and freed of overlaps. Where two overlap the wider one holds: a hole that
 * was reamed is as wide as its widest bit. What lies above ground is cut.
 */
export function resolveSections(bore: Bore | undefined): Resolved<BoreSectionModel[]> {
  const read = readRanges('bore', 'bore.sections', bore?.sections ?? []);
  const usable = read.value.flatMap((section) => {
    const below = hasDiameter(section) && cut(section, 0, Infinity);
    return below ? [{ ...section, ...below }] : [];
  });
  const laid = layFlat(usable, (a, b) => (b.entry.diameter > a.entry.diameter ? b : a));
  const overlaps = overlapsOf(usable).map(({ fromM, toM, item: [one, other] }) =>
    found(
      'bore.overlap',
      other.path,
      { diameterMm: other.entry.diameter, otherMm: one.entry.diameter },
      { fromM, toM },
    ),
  );
  return {
    value: laid.map(({ fromM, toM, item }) => ({
      fromM,
      toM,
      diameterMm: item.entry.diameter,
      path: item.path,
    })),
    findings: [...read.findings, ...read.value.flatMap(checkSection), ...overlaps],
  };
}

function deepest(ranges: readonly Range[]): DepthM | undefined {
  return ranges.length === 0 ? undefined : Math.max(...ranges.map(({ toM }) => toM));
}

/** Depth of the hole as the bore's own chapter tells it: depth reached, else deepest section. */
export function writtenDepth(
  bore: Bore | undefined,
  sections: readonly Range[],
): DepthM | undefined {
  const reached = bore?.depthReached;
  if (reached !== undefined && Number.isFinite(reached) && roundDepth(reached) > 0)
    return roundDepth(reached);
  return deepest(sections);
}

/** Depth that the hole must have for what is known to lie in it; nothing where that is nothing. */
export function impliedDepth(contents: readonly Range[]): DepthM | undefined {
  const depthM = deepest(contents);
  return depthM !== undefined && depthM > 0 ? depthM : undefined;
}

function checkDepths(bore: Bore | undefined, sections: readonly BoreSectionModel[]): Finding[] {
  const findings: Finding[] = [];
  const depthM = bore?.depthReached;
  if (depthM === undefined) return findings;
  const path = 'bore.depthReached';
  if (!(roundDepth(depthM) > 0))
    return [found('bore.depthNotBelowGround', path, { depthM }, { fromM: depthM })];
  for (const { fromM, toM, path } of sections)
    if (toM > depthM)
      findings.push(
        found('bore.sectionBelowDepth', path, { depthM }, { fromM: Math.max(fromM, depthM), toM }),
      );
  const foundM = bore?.depthFound;
  if (foundM !== undefined && foundM > depthM)
    findings.push(
      found('bore.foundBelowDepth', 'bore.depthFound', { foundM, depthM }, { fromM: foundM }),
    );
  return findings;
}

/**
 * Where no diameter is known: one note where nothing is recorded of any, else a warning for each
 * stretch that is left out. Sections that lack theirs are said by themselves.
 */
function checkGaps(
  bore: Bore | undefined,
  sections: readonly BoreSectionModel[],
  depthM: DepthM,
): Finding[] {
  const path = 'bore.sections';
  const bare = readRanges('bore', path, bore?.sections ?? []).value.filter(
    (section) => !hasDiameter(section),
  );
  if (sections.length === 0 && bare.length === 0)
    return [found('bore.diametersUnknown', path, {}, { fromM: 0, toM: depthM })];
  return gapsIn([...sections, ...bare], 0, depthM).map((gap) => found('bore.gap', path, {}, gap));
}

/**
 * The hole. Its depth is what the bore's chapter says; where that is silent, the deepest of the
 * log and the strings (`implied`), with a note. Sections are cut at the depth reached.
 */
export function resolveBore(
  bore: Bore | undefined,
  sections: readonly BoreSectionModel[],
  implied: DepthM | undefined,
): Resolved<BoreModel> {
  const written = writtenDepth(bore, sections);
  const depthM = written ?? implied;
  const findings = checkDepths(bore, sections);
  if (depthM === undefined) return { value: { sections }, findings };
  if (written === undefined)
    findings.push(found('bore.depthAssumed', 'bore.depthReached', { depthM }, { fromM: depthM }));
  const kept = sections.flatMap((section) => {
    const range = cut(section, 0, depthM);
    return range ? [{ ...section, ...range }] : [];
  });
  findings.push(...checkGaps(bore, kept, depthM));
  const foundM = bore?.depthFound;
  const sounded = foundM !== undefined && roundDepth(foundM) !== depthM ? { foundM } : {};
  return { value: { sections: kept, depthM, ...sounded }, findings };
}
