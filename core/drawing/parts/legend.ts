import type { PaperMm } from '../../base/units.ts';
import type { Stratum, WellModel } from '../../model/wellModel.ts';
import { hatchForFill } from '../hatches/index.ts';
import type { Item } from '../items.ts';
import type { Kit } from '../kit.ts';
import { baseline, letter } from '../letters.ts';
import { dashed, lineHeight, solid } from '../pens.ts';
import { corners, hatched, line, rectangle } from '../shapes.ts';
import { blockPad, blockTitle, blockTitleHeight, type Block } from './block.ts';
import { hatchOf } from './ground.ts';
import { signEntries, type LegendEntry } from './legendSigns.ts';

const swatch = { width: 8, height: 3.9 } as const;
const pitch: PaperMm = 5;

function hatchEntry(says: string, hatch: string): LegendEntry {
  return {
    says,
    draw: (x, y) => {
      const box = { x, y, ...swatch };
      return [
        hatched(corners(box), hatch, undefined, '#ffffff'),
        rectangle(box, { stroke: solid('thin') }),
      ];
    },
  };
}

function materialWords(kit: Kit, { interval }: Stratum): string {
  const { materials } = kit.words;
  if (interval.material === undefined) return kit.words.noDescription;
  const second = interval.qualifiers?.find((one) => one.degree !== 'slightly')?.material;
  const noun = materials[interval.material].noun;
  if (second === undefined || second === interval.material) return noun;
  const word = materials[second].second;
  return word.includes(' ') ? `${noun} ${word}` : `${word} ${noun}`;
}

function groundEntries(kit: Kit, strata: readonly Stratum[]): LegendEntry[] {
  const used = new Map<string, string>();
  for (const stratum of strata) {
    const hatch = hatchOf(stratum);
    if (hatch !== undefined && !used.has(hatch)) used.set(hatch, materialWords(kit, stratum));
  }
  return [...used].map(([hatch, says]) => hatchEntry(says, hatch));
}

function fillEntries(kit: Kit, { annulus }: WellModel): LegendEntry[] {
  const used = [...new Set(annulus.filter(({ rings }) => rings.length > 0).map(({ fill }) => fill))];
  return used.map((fill) => hatchEntry(kit.words.fills[fill], hatchForFill(fill)));
}

function contactEntries(kit: Kit, strata: readonly Stratum[]): LegendEntry[] {
  const used = new Set(strata.map(({ interval }) => interval.boundary));
  const sample = (says: string, doubt: string): LegendEntry => ({
    says,
    draw: (x, y) => [
      line([x, y + 2], [x + swatch.width, y + 2], dashed('narrow')),
      ...letter(kit, doubt, x + swatch.width - 1.6, y + 1.6),
    ],
  });
  return [
    ...(used.has('gradual') ? [sample(kit.words.legend.gradual, '')] : []),
    ...(used.has('uncertain') ? [sample(kit.words.legend.uncertain, '?')] : []),
  ];
}

/** A legend of what this sheet uses, and of nothing else, in two columns. */
export function layLegend(kit: Kit, model: WellModel, width: PaperMm): Block {
  const entries = [
    ...groundEntries(kit, model.strata),
    ...contactEntries(kit, model.strata),
    ...fillEntries(kit, model),
    ...signEntries(kit, model),
  ];
  const rows = Math.ceil(entries.length / 2);
  const column = width / 2;
  const draw = (x: PaperMm, y: PaperMm): Item[] => [
    ...blockTitle(kit, kit.words.legend.title, x, y, width),
    ...entries.flatMap((entry, at) => {
      const left = x + Math.floor(at / rows) * column;
      const top = y + blockTitleHeight + (at % rows) * pitch;
      const text = top + (swatch.height - lineHeight('small')) / 2 + baseline('small');
      return [
        ...entry.draw(left, top),
        ...letter(kit, entry.says, left + swatch.width + 1.2, text, {
          widest: column - swatch.width - 1.8,
        }),
      ];
    }),
  ];
  return { height: blockTitleHeight + rows * pitch + blockPad, draw };
}
