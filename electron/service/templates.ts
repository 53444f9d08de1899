import { ok } from '../../core/base/result.ts';
import type { LogoFile } from '../../core/contract/templatesShape.ts';
import { readTemplate } from '../../core/template/readTemplate.ts';
import { reads, writes, type Handlers, type ServiceParts } from './handlers.ts';
import { ownTemplates, templateText } from './ownTemplates.ts';
import { settleLogos, type LogoFiles } from './settleLogos.ts';
import { tryTemplate } from './tryTemplate.ts';

function filesOf(logos: readonly LogoFile[]): LogoFiles {
  return (name) => {
    const file = logos.find((one) => one.name === name);
    return file && Buffer.from(file.data, 'base64');
  };
}

/** Calls about the templates of organisations that the archive keeps. */
export function templatesHandlers(parts: ServiceParts): Handlers<'templates'> {
  const { fonts, clock, tell } = parts;
  const { templates } = parts.archive;
  const changed = () => tell({ name: 'templates.changed', data: {} });
  return {
    'templates.list': reads(() => ownTemplates(templates)),
    'templates.put': writes(({ name, template, logos }) => {
      const read = readTemplate(template);
      const settled = read.ok ? settleLogos(read.value, filesOf(logos)) : read;
      const tried = settled.ok ? tryTemplate(settled.value, fonts, clock()) : settled;
      if (!tried.ok) return tried;
      const kept = templates.put(name.trim(), templateText(tried.value));
      if (!kept.ok) return kept;
      changed();
      const { usual, changedAt } = kept.value;
      return ok({ name: kept.value.name, template: tried.value, usual, changedAt });
    }),
    'templates.choose': writes(({ name }) => {
      const chosen = templates.choose(name);
      if (!chosen.ok) return chosen;
      changed();
      return ok(null);
    }),
    'templates.remove': writes(({ name }) => {
      const gone = templates.remove(name);
      if (!gone.ok) return gone;
      changed();
      return ok(null);
    }),
  };
}
