import { filled } from '../../base/text/filled.ts';
import type { PaperMm } from '../../base/units.ts';
import { wellStates } from '../../record/identity.ts';
import { dayFigure } from '../figures.ts';
import type { Box, Item } from '../items.ts';
import { bound, letter, lettered, wrapped, type TextLook } from '../letters.ts';
import { mostLines, mostLogos, type Template } from '../parts/headStrip.ts';
import { lineHeight, solid } from '../pens.ts';
import { group, line, rectangle } from '../shapes.ts';
import type { BinderContent, BinderKit, LaidPart, Volume } from './binder.ts';
import type { BinderWell } from './binderWell.ts';
import { counted, distinct, sayState } from './say.ts';

const pad: PaperMm = 10;
const logoHeight: PaperMm = 22;
const widestLogo: PaperMm = 50;

function drawLogos({ logos }: Template, { x, y }: Box): Item[] {
  let left = x;
  return logos.slice(0, mostLogos).map((logo): Item => {
    const scale = Math.min(logoHeight / logo.height, widestLogo / logo.width);
    const [width, height] = [logo.width * scale, logo.height * scale];
    const item = { kind: 'image', x: left, y, width, height } as const;
    left += width + 4;
    return { ...item, data: logo.data, says: logo.says };
  });
}

/** Logos over names and address, in the upper part of the cover. */
function drawSender(kit: BinderKit, template: Template, box: Box): Item[] {
  const top = box.y + (template.logos.length > 0 ? logoHeight + 4 : 0);
  const [first = '', ...more] = template.name.slice(0, mostLines);
  const names = lettered(kit, [first], box.x, top, {
    lettering: 'large',
    face: 'bold',
    widest: box.width,
  });
  const rest = [...more, ...template.address.slice(0, mostLines)];
  const under = top + lineHeight('large') + 1;
  return [
    ...drawLogos(template, box),
    ...names,
    ...lettered(kit, rest, box.x, under, { widest: box.width }),
  ];
}

/** Names, or how many they are where they would not stand in two lines. */
function named(
  kit: BinderKit,
  names: readonly string[],
  count: Parameters<typeof counted>[0],
  width: PaperMm,
  look: TextLook,
): string {
  const all = names.join(', ');
  return wrapped(kit, all, width, look).length <= 2 ? all : counted(count, names.length);
}

function periodOf(wells: readonly BinderWell[]): string | undefined {
  const days = wells.flatMap(({ startedOn, finishedOn }) =>
    [startedOn ?? [], finishedOn ?? []].flat(),
  );
  if (days.length === 0) return undefined;
  const sorted = [...new Set(days)].sort();
  return [...new Set([sorted[0]!, sorted.at(-1)!])].join(' – ');
}

function statesOf(kit: BinderKit, wells: readonly BinderWell[]): string {
  return [...wellStates, '' as const]
    .map((state) => ({ state, n: wells.filter((well) => well.state === state).length }))
    .filter(({ n }) => n > 0)
    .map(({ state, n }) => `${sayState(kit, state)}${bound}${n}`)
    .join(', ');
}

type Row = readonly [what: string, says: string];

function factsOf(kit: BinderKit, content: BinderContent, width: PaperMm, look: TextLook): Row[] {
  const { own } = kit;
  const { wells, papers, madeAt, madeBy, template } = content;
  const districts = distinct(wells.map(({ district }) => district));
  const programmes = distinct(wells.map(({ programme }) => programme));
  const rows: Row[] = [
    [own.cover.district, named(kit, districts, own.counts.districts, width, look)],
    [
      template?.labels.programme ?? own.cover.programme,
      named(kit, programmes, own.counts.programmes, width, look),
    ],
    [own.cover.wells, String(wells.length)],
    [own.cover.states, statesOf(kit, wells)],
    [own.cover.period, periodOf(wells) ?? own.cover.noPeriod],
    [own.cover.papers, papers.map((paper) => own.papers[paper]).join(', ')],
    [own.cover.madeOn, dayFigure(madeAt)],
    [own.cover.madeBy, madeBy],
  ];
  return rows.filter(([, says]) => says !== '');
}

const whatWidth: PaperMm = 52;

/** Rows of what and how, each under a hairline; gives where they end. */
function drawFacts(kit: BinderKit, content: BinderContent, box: Box) {
  const look = { lettering: 'normal' } as const;
  const width = box.width - whatWidth;
  let y = box.y;
  const items = factsOf(kit, content, width, look).flatMap(([what, says]): Item[] => {
    const lines = wrapped(kit, says, width, look);
    const top = y + 1.2;
    y += lines.length * lineHeight('normal') + 2.4;
    return [
      ...lettered(kit, [what], box.x, top, { ...look, face: 'bold', widest: whatWidth - 2 }),
      ...lettered(kit, lines, box.x + whatWidth, top, look),
      line([box.x, y], [box.x + box.width, y], solid('hair')),
    ];
  });
  return { items, end: y };
}

const mostTitleLines = 4;

/** The title in the larger of two letterings in which it stands in four lines. */
function titleLines(kit: BinderKit, title: string, width: PaperMm) {
  const looks = (['number', 'title'] as const).map((lettering) => ({
    lettering,
    face: 'bold' as const,
    widest: width,
  }));
  const tries = looks.map((look) => ({ look, lines: wrapped(kit, title, width, look) }));
  const { look, lines } = tries.find((one) => one.lines.length <= mostTitleLines) ?? tries.at(-1)!;
  if (lines.length <= mostTitleLines) return { look, lines };
  const shown = [...lines.slice(0, mostTitleLines - 1), `${lines[mostTitleLines - 1]}…`];
  return { look, lines: shown };
}

function drawVolume(kit: BinderKit, volume: Volume, { x, width }: Box, y: PaperMm): Item[] {
  const { own } = kit;
  const values = { n: String(volume.number), of: String(volume.of) };
  const pages = { from: String(volume.fromPage), to: String(volume.toPage) };
  const says = `${filled(own.cover.volume, values)}, ${filled(own.cover.volumePages, pages)}`;
  return letter(kit, says, x, y, { lettering: 'large', widest: width });
}

/** The disclaimer of an organisation over the binder's caution, at the foot of the box. */
function drawFoot(kit: BinderKit, { template }: BinderContent, box: Box): Item[] {
  const { x, width } = box;
  const disclaimer = template?.disclaimer ? wrapped(kit, template.disclaimer, width) : [];
  const caution = wrapped(kit, kit.own.cover.caution, width, { face: 'bold' });
  const cautionTop = box.y + box.height - caution.length * lineHeight('small');
  const top = cautionTop - 1.5 - disclaimer.length * lineHeight('small');
  return [
    ...lettered(kit, disclaimer, x, top),
    ...lettered(kit, caution, x, cautionTop, { face: 'bold' }),
  ];
}

/** One page; of a binder in volumes, one for each of them. */
export function layCover(kit: BinderKit, content: BinderContent, volume?: Volume): LaidPart {
  const { frame, width, height } = kit.paper;
  const inner = {
    x: frame.x + pad,
    y: frame.y + pad,
    width: frame.width - 2 * pad,
    height: frame.height - 2 * pad,
  };
  const { look, lines } = titleLines(kit, content.title, inner.width);
  const titleTop = frame.y + frame.height * 0.27;
  const titleEnd = titleTop + lines.length * lineHeight(look.lettering);
  const facts = drawFacts(kit, content, { ...inner, y: titleEnd + 16 });
  const items = [
    rectangle(frame, { stroke: solid('frame') }),
    ...(content.template ? drawSender(kit, content.template, inner) : []),
    ...lettered(kit, lines, inner.x, titleTop, look),
    ...(volume ? drawVolume(kit, volume, inner, titleEnd + 7) : []),
    ...facts.items,
    ...drawFoot(kit, content, inner),
  ];
  return { pages: [{ width, height, items: [group('cover', items)] }], marks: [] };
}
