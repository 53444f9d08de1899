import { refused, type Result, ok } from '../../core/base/result.ts';
import type { Template } from '../../core/drawing/parts/headStrip.ts';
import type { ShippedFonts } from '../files/fonts.ts';
import { makeLayingOut } from './sheet.ts';

/**
 * Makes a paper with a template before anything is kept of it: only then is it known that its
 * pictures are whole.
 */
export function tryTemplate(
  template: Template,
  fonts: ShippedFonts,
  madeAt: string,
): Result<Template> {
  try {
    makeLayingOut({ schemaVersion: 1 }, { fonts, madeAt, template }).pdf();
    return ok(template);
  } catch {
    return refused(
      'templateUnread',
      'No paper can be made with this template: a logo is a damaged picture. Save the logo anew as PNG or JPEG.',
    );
  }
}
