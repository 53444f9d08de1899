import { expect, it } from 'vitest';
import type { IssuedPaper } from '../../../../core/drawing/binder/issued/issuedPaper.ts';
import { layIssued } from '../../../../core/drawing/binder/issued/layIssued.ts';
import { presentParts } from '../../../../core/drawing/binder/presentParts.ts';
import { textsOn } from '../../../sheets/placed.ts';
import { contentOf, demoBinderWells, farPlaces, kitIn } from './madeBinder.ts';

const [first, second] = demoBinderWells;
const paper: IssuedPaper = {
  wellId: first!.id,
  number: 1,
  kind: 'asBuilt',
  paper: 'as-built A3',
  languages: 'en',
  revision: 1,
  newest: 1,
  issuedAt: '2026-01-31T23:30:00+00:00',
  signatures: [],
  hash: '0123456789abcdef'.repeat(4),
};

const contentWith = (papers: readonly IssuedPaper[], folder?: string) =>
  contentOf(demoBinderWells, { issued: { papers, ...(folder !== undefined && { folder }) } });

const pageOf = (papers: readonly IssuedPaper[], folder?: string) =>
  layIssued(kitIn('en'), contentWith(papers, folder), farPlaces).pages[0]!;

const said = (papers: readonly IssuedPaper[], folder?: string) =>
  textsOn(pageOf(papers, folder)).map(({ item }) => item.text).join(' '); // prettier-ignore

it('stands in a binder only where something was issued', () => {
  expect(presentParts(contentWith([]))).not.toContain('issued');
  expect(presentParts(contentWith([paper]))).toContain('issued');
});

it('tells each paper with its kind, size, language, revision, day and the beginning of its hash', () => {
  const text = said([paper]);
  for (const one of [first!.number, 'As-built drawing', 'A3, en', '2026-01-31', 'not signed'])
    expect(text).toContain(one);
  expect(text).toContain('01234567 89abcdef');
  expect(text).not.toContain('01234567 89abcdef 0');
});

it('says where the well has a newer revision than the paper shows', () => {
  expect(said([paper])).not.toMatch(/\(now \d/);
  expect(said([{ ...paper, newest: 4 }])).toContain('1 (now 4)');
});

it('names who signed, and what became of a signature that does not hold', () => {
  const signatures = [
    { name: 'Ama Dravunké', role: 'Client', state: 'holds' },
    { name: '', role: '', state: 'changed' },
  ] as const;
  const text = said([{ ...paper, signatures }]);
  expect(text).toContain('Ama Dravunké, Client;');
  expect(text).not.toContain('Client (');
  expect(text).toMatch(/name not +readable +\(does not +hold/);
});

it('has a paper of an unknown kind as the archive lists it', () => {
  const { kind, ...unknown } = paper;
  expect(kind).toBe('asBuilt');
  expect(said([{ ...unknown, paper: 'pump card A5' }])).toContain('pump card A5');
});

it('leads from each row to the papers of its well, in the order of the binder', () => {
  const papers = [{ ...paper, wellId: second!.id }, paper, { ...paper, number: 2 }];
  const content = contentWith(papers);
  const order = content.wells
    .map(({ id }) => id)
    .filter((id) => [first!.id, second!.id].includes(id));
  const counts = { [first!.id]: 2, [second!.id]: 1 };
  const places = { ...farPlaces, pageOf: (id: string) => order.indexOf(id) + 1 };
  const [page] = layIssued(kitIn('en'), content, places).pages;
  const body = page!.items.flatMap((item) => (item.kind === 'group' ? item.items : [item]));
  const links = body.flatMap((item) => (item.kind === 'link' ? [item.to] : []));
  expect(links).toEqual(order.flatMap((id, at) => Array(counts[id]).fill({ page: at + 1 })));
});

it('names the folder where the papers were copied, and none where they were not', () => {
  expect(said([paper])).not.toContain('lie beside');
  expect(said([paper], 'Yearly-issued')).toContain('in the folder Yearly-issued.');
});
