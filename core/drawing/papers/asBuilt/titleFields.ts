import type { WellRecord } from '../../../record/schema.ts';
import type { Kit } from '../../kit.ts';
import { dayFigure } from '../../figures.ts';
import type { TitleFields } from '../../parts/titleBlock.ts';

/** What of the sheet the title block cannot read from the record. */
export interface SheetFacts {
  readonly madeAt: string;
  readonly revision?: number;
  /** The paper is kept as it is made now. */
  readonly issued?: boolean;
  /** It shows what is in no revision yet. */
  readonly draft?: boolean;
  readonly sheet: number;
  readonly sheets: number;
  readonly depthScale?: number;
  readonly widthScale?: number;
  /** What the page is, where it is not of the well itself. */
  readonly document?: string;
  /** What the code tells, on the page that carries it. */
  readonly code?: string | undefined;
}

const joined = (...parts: (string | undefined)[]) => parts.filter(Boolean).join(', ');

/** A site that was only laid out has a plan; a hole without casing has no as-built. */
function documentType(kit: Kit, { identity, strings }: WellRecord): string {
  const { title } = kit.words;
  if (identity?.state === 'laidOut') return title.planned;
  return strings?.length ? title.asBuilt : title.notBuilt;
}

/** How far a paper holds. */
function standing({ words: { title } }: Kit, { issued, draft }: SheetFacts): string {
  if (issued) return title.issued;
  return draft ? title.typed : title.draft;
}

/** The block's fields: people who are not known stay empty, other gaps are shown by a dash. */
export function titleFields(kit: Kit, record: WellRecord, facts: SheetFacts): TitleFields {
  const { identity = {}, site = {} } = record;
  const { words } = kit;
  const scale = (value: number | undefined) => (value === undefined ? '–' : `1:${value}`);
  const state = identity.state && words.states[identity.state];
  return {
    client: identity.client ?? '',
    programme: identity.programme ?? '',
    contract: identity.contract ?? '',
    contractor: identity.contractor ?? '',
    supervisor: identity.supervisor ?? '',
    approval: record.marks?.find(({ role }) => role === 'client')?.name ?? '',
    title: identity.name ?? site.village ?? '–',
    place: joined(site.village, site.spot),
    district: joined(site.commune, site.district, site.region, site.country),
    number: identity.number ?? '–',
    documentType: facts.document ?? documentType(kit, record),
    status: joined(state, standing(kit, facts)),
    revision: facts.revision === undefined ? '–' : String(facts.revision),
    date: dayFigure(facts.madeAt),
    sheet: `${facts.sheet} ${words.of} ${facts.sheets}`,
    depthScale: scale(facts.depthScale),
    widthScale: scale(facts.widthScale),
    ...(facts.code !== undefined && { code: facts.code }),
  };
}
