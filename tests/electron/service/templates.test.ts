import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { beforeEach, describe, expect, it } from 'vitest';
import type { LogoFile } from '../../../core/contract/templatesShape.ts';
import { mostTemplates } from '../../../electron/archive/templates.ts';
import type { Archive } from '../../../electron/archive/archive.ts';
import { openArchive } from '../../../electron/archive/open.ts';
import type { Service } from '../../../electron/service/service.ts';
import { watchArchive } from '../../../electron/service/watch.ts';
import { well } from '../../demo-data/wells.ts';
import { openPdf } from '../../reading/pdf.ts';
import { countingWorld, openFresh, valueOf } from '../archive/sample.ts';
import { freshService } from './sample.ts';

const file = fileURLToPath(new URL('../../../docs/template.example.json', import.meta.url));
const example = JSON.parse(readFileSync(file, 'utf8')) as {
  name: string[];
  logos: { says: string; data: string }[];
};
const [drop] = example.logos;

let archive: Archive;
let service: Service;

beforeEach(() => {
  archive = openFresh();
  service = freshService(archive);
});

const put = (name: string, template: object = example, logos: readonly LogoFile[] = []) =>
  service.call('templates.put', { name, template, logos });
const list = async () => valueOf(await service.call('templates.list', {}));
const choose = (name?: string) => service.call('templates.choose', name ? { name } : {});

async function textOf(pdf: string): Promise<string> {
  const read = await openPdf(new Uint8Array(Buffer.from(pdf, 'base64')));
  const page = await (await read.getPage(1)).getTextContent();
  return page.items.map((one) => ('str' in one ? one.str : '')).join(' ');
}

describe('a template in the archive', () => {
  it('is kept with the bytes of its logos, and takes the place of the one with its name', async () => {
    const named = { ...example, logos: [{ says: 'A drop', file: 'drop.png' }] };
    valueOf(await put('office', named, [{ name: 'drop.png', data: drop!.data }]));
    valueOf(
      await put('office', { ...named, name: ['Other office'] }, [
        { name: 'drop.png', data: drop!.data },
      ]),
    );
    archive.close();
    archive = valueOf(openArchive(archive.file, countingWorld()));
    service = freshService(archive);
    const { templates, unread } = await list();
    expect([templates.length, unread]).toEqual([1, []]);
    expect(templates[0]).toMatchObject({
      name: 'office',
      usual: true,
      template: {
        name: ['Other office'],
        logos: [{ says: 'A drop', width: 96, data: `data:image/png;base64,${drop!.data}` }],
      },
    });
  });

  it('is refused with its faults and their places, and nothing of it is kept', async () => {
    const sentenceOf = async (template: object, logos: readonly LogoFile[] = []) => {
      const answer = await put('office', template, logos);
      return answer.ok ? '' : `${answer.error.code}: ${answer.error.sentence}`;
    };
    expect(await sentenceOf({ name: [] })).toContain('templateUnread: This is no template yet');
    const named = { name: ['A'], logos: [{ says: 'x', file: 'x.png' }] };
    expect(await sentenceOf(named)).toContain('The logo x.png does not lie beside');
    expect(await sentenceOf(named, [{ name: 'x.png', data: 'AAAA' }])).toContain('neither a PNG');
    const large = Buffer.alloc(1_000_001).toString('base64');
    expect(await sentenceOf(named, [{ name: 'x.png', data: large }])).toContain('larger than 1 MB');
    expect((await list()).templates).toEqual([]);
  });

  it('is refused where a logo has the head of a picture and is damaged after it', async () => {
    const bytes = Buffer.from(drop!.data, 'base64');
    const cut = bytes.fill(0x41, 40, bytes.length - 20).toString('base64');
    const answer = await put('office', { name: ['A'], logos: [{ says: 'x', data: cut }] });
    expect(answer).toMatchObject({
      error: { code: 'templateUnread', sentence: expect.stringContaining('damaged picture') },
    });
  });

  it('is the usual one where it is the first, and another one or none may be chosen', async () => {
    valueOf(await put('a'));
    valueOf(await put('b'));
    const usual = async () => (await list()).templates.filter((one) => one.usual);
    expect((await usual()).map(({ name }) => name)).toEqual(['a']);
    valueOf(await choose('b'));
    expect((await usual()).map(({ name }) => name)).toEqual(['b']);
    expect(await choose('gone')).toMatchObject({ error: { code: 'noSuchTemplate' } });
    expect((await usual()).map(({ name }) => name)).toEqual(['b']);
    valueOf(await choose());
    expect(await usual()).toEqual([]);
    valueOf(await service.call('templates.remove', { name: 'a' }));
    expect((await list()).templates.map(({ name }) => name)).toEqual(['b']);
  });

  it(`is one of ${mostTemplates} at most`, async () => {
    for (let at = 0; at < mostTemplates; at += 1) valueOf(await put(`t${at}`, { name: ['A'] }));
    expect(await put('more')).toMatchObject({ error: { code: 'tooManyTemplates' } });
    valueOf(await put('t3', { name: ['B'] }));
  });

  it('heads every paper that the archive makes, and none once it is taken away', async () => {
    const { id } = valueOf(
      await service.call('wells.create', { record: well('laid-out-45m.json') }),
    );
    const papers = async () => [
      valueOf(await service.call('papers.asBuilt', { id, paper: 'A4' })).pdf,
      valueOf(await service.call('papers.layingOut', { id })).pdf,
      valueOf(await service.call('papers.committee', { id, languages: ['en'] })).pdf,
      valueOf(await service.call('papers.batch', { ids: [id], paper: 'A4' })).pdf,
    ];
    const before = await papers();
    valueOf(await put('office'));
    for (const pdf of await papers())
      expect(await textOf(pdf)).toContain('Eau rurale de Kelumvara');
    const paper = { kind: 'committee', languages: ['en'] } as const;
    valueOf(await service.call('issues.make', { id, paper }));
    const [issued] = valueOf(await service.call('issues.list', { id }));
    const kept = valueOf(await service.call('issues.pdf', { id, number: issued!.number }));
    expect(await textOf(kept.pdf)).toContain('Service des puits villageois');
    valueOf(await service.call('templates.remove', { name: 'office' }));
    expect(await papers()).toEqual(before);
  });

  it('that this version cannot read is named, and no paper is made without it unsaid', async () => {
    valueOf(archive.templates.put('later', '{"name":["A"],"newKey":1}'));
    const { id } = valueOf(await service.call('wells.create', { record: { schemaVersion: 1 } }));
    expect((await list()).unread).toMatchObject([
      { name: 'later', sentence: expect.stringContaining('newKey') },
    ]);
    expect(await service.call('papers.layingOut', { id })).toMatchObject({
      error: { code: 'templateUnread', sentence: expect.stringContaining('The template later') },
    });
    valueOf(await choose());
    valueOf(await service.call('papers.layingOut', { id }));
  });

  it('is told to every page, also where another program brought it in', async () => {
    const heard: string[] = [];
    service.onEvent(({ name }) => heard.push(name));
    valueOf(await put('office'));
    valueOf(await choose());
    const look = watchArchive(archive, ({ name }) => heard.push(name));
    const theirs = valueOf(openArchive(archive.file, countingWorld()));
    valueOf(theirs.templates.remove('office'));
    look();
    look();
    expect(heard).toEqual(Array(3).fill('templates.changed'));
    theirs.close();
  });
});
