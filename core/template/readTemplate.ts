import { z } from 'zod';
import { known } from '../base/known.ts';
import { writePath, type PathStep } from '../base/recordPath.ts';
import { ok, refused, type Result } from '../base/result.ts';
import { labelIds, mostLines, mostLogos, type Template } from '../drawing/parts/headStrip.ts';

/** A template as it is written: its logos still as text, or in files beside it. */
export interface TemplateFile extends Omit<Template, 'logos'> {
  readonly logos: readonly WrittenLogo[];
}

export interface WrittenLogo {
  readonly says: string;
  /** PNG or JPEG in base64. */
  readonly data?: string;
  /** Name of a file beside the template. */
  readonly file?: string;
}

const line = (says: string) => z.string(says).trim().min(1, says).max(200, says);

const lines = (what: string) =>
  z
    .array(line(`write each line of ${what} as a text`), `write ${what} as a list of lines`)
    .max(mostLines, `the head strip has room for ${mostLines} lines of ${what}`);

const logo = z
  .strictObject(
    {
      says: line('write what the logo shows, for those who cannot see it'),
      data: z.string('write the picture in base64').exactOptional(),
      file: z
        .string('write the name of the file')
        .regex(
          /^[^/\\]+$/,
          'write the name of a file that lies beside the template, without folders',
        )
        .exactOptional(),
    },
    'write a logo as an object with says and either file or data',
  )
  .refine(
    ({ data, file }) => (data === undefined) !== (file === undefined),
    'give a logo either file or data',
  );

const label = line('write the label as a text');

const templateFile = z.strictObject(
  {
    name: lines('the name').min(1, 'write at least one line of the name'),
    address: lines('the address').default([]),
    logos: z
      .array(logo, 'write the logos as a list')
      .max(mostLogos, `the head strip has room for ${mostLogos} logos`)
      .default([]),
    labels: z
      .strictObject(
        Object.fromEntries(labelIds.map((id) => [id, label.exactOptional()])),
        `write the labels as an object with any of ${labelIds.join(', ')}`,
      )
      .default({}),
    disclaimer: z
      .string('write the disclaimer as a text')
      .trim()
      .min(1, 'write the disclaimer, or leave it out')
      .max(400, 'a disclaimer has room for 400 letters')
      .exactOptional(),
  },
  'a template is an object with name, address, logos, labels and disclaimer',
);

function saidOf({ path, code, message, ...issue }: z.core.$ZodIssue): string[] {
  const at = (steps: readonly PropertyKey[]) => writePath(steps as PathStep[]) || 'the template';
  if (code === 'unrecognized_keys' && 'keys' in issue)
    return issue.keys.map((key) => `${at([...path, key])}: there is no such field`);
  return [`${at(path)}: ${message}`];
}

/** A template from what stands in its file; a refusal names every fault with its place. */
export function readTemplate(written: unknown): Result<TemplateFile> {
  const read = templateFile.safeParse(written);
  if (!read.success)
    return refused(
      'templateUnread',
      `This is no template yet. ${read.error.issues.flatMap(saidOf).join('. ')}.`,
    );
  const { disclaimer, labels, ...file } = read.data;
  return ok({ ...file, labels: known(labels), ...(disclaimer !== undefined && { disclaimer }) });
}
