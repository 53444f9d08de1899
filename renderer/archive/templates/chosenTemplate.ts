import { ok, refused, type Result } from '../../../core/base/result.ts';
import { largestLogo, type LogoFile } from '../../../core/contract/templatesShape.ts';
import { readTemplate } from '../../../core/template/readTemplate.ts';
import { fileBase64 } from '../../parts/fileBase64.ts';

/** A template of a file that was chosen, before it lies in the archive. */
export interface ChosenTemplate {
  readonly name: string;
  /** As its file has it. */
  readonly written: object;
  /** Names of the files of its logos. */
  readonly pictures: readonly string[];
}

/** Longest name of a template, letters, as the archive takes it. */
const longestName = 120;

export const isTemplateFile = ({ name }: File): boolean => /\.json$/i.test(name);

function parsed(text: string, name: string): Result<unknown> {
  try {
    return ok(JSON.parse(text));
  } catch {
    return refused('templateUnread', `${name} is not written as JSON.`);
  }
}

/** The template of a chosen file; refused with every fault of what stands there. */
export async function readChosen(file: File): Promise<Result<ChosenTemplate>> {
  const written = parsed(await file.text(), file.name);
  if (!written.ok) return written;
  const read = readTemplate(written.value);
  if (!read.ok) return read;
  const name = file.name.replace(/(.)\.json$/i, '$1').slice(0, longestName);
  const pictures = read.value.logos.flatMap((logo) => logo.file ?? []);
  return ok({ name, written: written.value as object, pictures: [...new Set(pictures)] });
}

/** Those of chosen files that a template names, as the archive takes them. */
export async function logosAmong(
  { pictures }: ChosenTemplate,
  files: readonly File[],
): Promise<Result<readonly LogoFile[]>> {
  const wanted = files.filter(({ name }) => pictures.includes(name));
  const large = wanted.find(({ size }) => size > largestLogo);
  if (large)
    return refused(
      'templateUnread',
      `The logo ${large.name} is larger than 1 MB: make it smaller.`,
    );
  return ok(
    await Promise.all(
      wanted.map(async (file) => ({ name: file.name, data: await fileBase64(file) })),
    ),
  );
}
