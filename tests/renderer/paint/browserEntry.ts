/** What the browser tests load into an empty page. */
import { paintPdf } from '../../../core/paint/pdf/paintPdf.ts';
import { paintPage } from '../../../renderer/paint/paintPage.ts';

export const painters = { paintPage, paintPdf };
Object.assign(globalThis, { painters });
