import { readFileSync } from 'node:fs';
import path from 'node:path';
import type { FaceId, Fonts } from '../../core/base/text/metrics.ts';

/** Where the fonts stand beside the sources; a packed app hands in its own folder. */
const besideSources = path.resolve(import.meta.dirname, '../../assets/fonts');

/** File of each face, in the fonts' folder. */
export const fontFileNames: Readonly<Record<FaceId, string>> = {
  regular: 'SourceSans3-Regular.ttf',
  bold: 'SourceSans3-SemiBold.ttf',
  fallback: 'NotoSans-Regular.ttf',
};

export interface ShippedFonts {
  readonly metrics: Fonts;
  /** TrueType files, whole. */
  readonly files: Readonly<Record<FaceId, Uint8Array>>;
}

/** The shipped fonts and what text is measured by. Throws when a file of theirs is missing. */
export function readFonts(folder = besideSources): ShippedFonts {
  const file = (name: string) => readFileSync(path.join(folder, name));
  return {
    metrics: JSON.parse(file('metrics.json').toString('utf8')) as Fonts,
    files: {
      regular: new Uint8Array(file(fontFileNames.regular)),
      bold: new Uint8Array(file(fontFileNames.bold)),
      fallback: new Uint8Array(file(fontFileNames.fallback)),
    },
  };
}
