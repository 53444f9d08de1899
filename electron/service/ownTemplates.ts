import { ok, refused, type Result } from '../../core/base/result.ts';
import type { OwnTemplate, UnreadTemplate } from '../../core/contract/templatesShape.ts';
import type { Template } from '../../core/drawing/parts/headStrip.ts';
import { readTemplate } from '../../core/template/readTemplate.ts';
import type { KeptTemplate, Templates } from '../archive/templates.ts';
import { settleLogos } from './settleLogos.ts';

export interface ReadTemplates {
  readonly templates: readonly OwnTemplate[];
  readonly unread: readonly UnreadTemplate[];
}

/** As it lies in the archive: its logos within, as the bytes of their files. */
export function templateText({ logos, ...template }: Template): string {
  return JSON.stringify({ ...template, logos: logos.map(({ says, data }) => ({ says, data })) });
}

function readKept({ json }: KeptTemplate): Result<Template> {
  try {
    const read = readTemplate(JSON.parse(json));
    return read.ok ? settleLogos(read.value, () => undefined) : read;
  } catch {
    return refused('templateUnread', 'This template is not written as JSON.');
  }
}

function readAll(kept: readonly KeptTemplate[]): ReadTemplates {
  const templates: OwnTemplate[] = [];
  const unread: UnreadTemplate[] = [];
  for (const one of kept) {
    const { name, usual, changedAt } = one;
    const read = readKept(one);
    if (read.ok) templates.push({ name, template: read.value, usual, changedAt });
    else unread.push({ name, usual, sentence: read.error.sentence });
  }
  return { templates, unread };
}

/** The templates in an archive, and those that this version cannot read. */
export function ownTemplates(templates: Templates): Result<ReadTemplates> {
  const kept = templates.list();
  return kept.ok ? ok(readAll(kept.value)) : kept;
}

/** What papers of an archive's wells are made with, as their makers take it. */
export interface Headed {
  /** Absent where none was chosen. */
  readonly template?: Template;
}

/** The archive's usual template; refused where it cannot be read, so that no paper lacks it unsaid. */
export function usualTemplate(templates: Templates): Result<Headed> {
  const kept = templates.usual();
  if (!kept.ok) return kept;
  if (!kept.value) return ok({});
  const read = readKept(kept.value);
  if (read.ok) return ok({ template: read.value });
  return refused(
    'templateUnread',
    `The template ${kept.value.name} of this archive cannot be read. ${read.error.sentence} Choose another one, or none.`,
  );
}
