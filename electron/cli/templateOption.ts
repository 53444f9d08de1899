import path from 'node:path';
import { ok, type Result } from '../../core/base/result.ts';
import { readFonts } from '../files/fonts.ts';
import { loadTemplate } from '../service/loadTemplate.ts';
import type { Headed } from '../service/ownTemplates.ts';
import { tryTemplate } from '../service/tryTemplate.ts';
import { misused, textOption, type Given, type World } from './command.ts';

/** Options of every paper that a template may head. */
export const templateOptions = {
  template: { type: 'string' },
  'no-template': { type: 'boolean' },
} as const;

/** As help shows them. */
export const templateTakes = '[--template FILE|--no-template]';

/**
 * What papers are made with: the file that `--template` names, nothing after `--no-template`, else
 * undefined, which stands for the archive's own.
 */
export function readTemplateOption(
  given: Given,
  { folder, now }: World,
): Result<Headed | undefined> {
  const file = textOption(given, 'template');
  const without = given.options['no-template'] === true;
  if (file === undefined) return ok(without ? {} : undefined);
  if (without) return misused('Leave out --template, or --no-template.');
  const loaded = loadTemplate(path.resolve(folder, file));
  const template = loaded.ok ? tryTemplate(loaded.value, readFonts(), now()) : loaded;
  return template.ok ? ok({ template: template.value }) : template;
}
