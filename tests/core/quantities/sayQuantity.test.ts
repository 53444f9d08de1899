import { describe, expect, it } from 'vitest';
import { languages } from '../../../core/base/language.ts';
import { missingGlyph, runsOf } from '../../../core/base/text/metrics.ts';
import {
  quantityWords,
  sayAmount,
  sayFigure,
  sayInput,
  sayMissing,
  sayOf,
} from '../../../core/quantities/sayQuantity.ts';
import { readFonts } from '../../../electron/files/fonts.ts';
import { fileNames, well } from '../../demo-data/wells.ts';
import { all, cased, reckon, those } from './reckoned.ts';

const reckoned = reckon(cased(165, 110, 12, { from: 0, to: 12, fill: 'gravelPack' }));
const [litres] = those(reckoned, 'gravelZoneLitres');
const [sacks] = those(reckoned, 'gravelSacks');

function plain(text: string): string {
  return text.replaceAll('\u00a0', ' ');
}

describe('a quantity in words', () => {
  it('has no more digits than a measured diameter gives', () => {
    expect(sayFigure(2167.7, 'litres', 'en')).toBe('2170');
    expect(sayFigure(171.06, 'litres', 'en')).toBe('171');
    expect(sayFigure(9.96, 'kg', 'fr')).toBe('10');
    expect(sayFigure(4.335, 'kg', 'pt')).toBe('4,3');
    expect(sayFigure(0.047, 'kg', 'en')).toBe('0.05');
    expect(sayFigure(0, 'kg', 'en')).toBe('0');
    expect(sayFigure(33.85, 'm', 'fr')).toBe('33,85');
    expect(sayFigure(6, 'sacks', 'en')).toBe('6');
  });

  it('stands beside its unit in the singular or plural', () => {
    expect(plain(sayAmount(sacks!, 'en'))).toBe('6 sacks');
    expect(plain(sayAmount({ ...sacks!, value: 1 }, 'fr'))).toBe('1 sac');
    expect(plain(sayAmount({ ...sacks!, value: 0 }, 'fr'))).toBe('0 sac');
    expect(plain(sayAmount({ ...sacks!, value: 0 }, 'pt'))).toBe('0 sacos');
  });

  it('tells its fill and depths, or its pipe', () => {
    expect(plain(sayOf(litres!, 'en'))).toBe('gravel pack 0.00–12.00 m');
    expect(plain(sayOf(litres!, 'fr'))).toBe('massif de gravier 0,00–12,00 m');
    expect(plain(sayOf(those(reckoned, 'pipeM')[0]!, 'en'))).toBe('plain pipe uPVC 110 × 4.2');
    expect(sayOf(sacks!, 'en')).toBe('');
  });

  it('shows its inputs with their units', () => {
    expect(litres!.inputs.map((input) => plain(sayInput(input, 'fr')))).toEqual([
      'Vz = 142,5 L',
      'e = 0,2',
    ]);
    expect(plain(sayInput(sacks!.inputs[1]!, 'en'))).toBe('s = 50 kg');
  });

  it('says what is missing', () => {
    const missing = { what: 'boreDiameter', path: 'bore.sections', fromM: 7, toM: 12 } as const;
    expect(sayMissing(missing, 'en')).toBe('diameter of the hole, 7.00–12.00 m');
    expect(sayMissing({ what: 'joint', path: '' }, 'pt')).toBe('modo de união dos tubos');
  });
});

describe('the words of quantities', () => {
  it('are other in each language, and none is empty', () => {
    const texts = languages.map((language) => {
      const { groups, names } = quantityWords(language);
      return { ...groups, ...names } as Record<string, string>;
    });
    for (const one of texts) expect(Object.values(one)).not.toContain('');
    const [en, fr, pt] = texts as [(typeof texts)[0], (typeof texts)[0], (typeof texts)[0]];
    const alike = Object.keys(en).filter((key) => en[key] === fr[key] || fr[key] === pt[key]);
    expect(alike).toEqual(['joints']);
  });

  it('and the formulas have a glyph for each letter in a shipped font', () => {
    const said = languages.flatMap((language) =>
      fileNames
        .flatMap((name) => all(reckon(well(name))))
        .flatMap((one) => [
          one.formula,
          sayAmount(one, language),
          sayOf(one, language),
          ...one.inputs.map((input) => sayInput(input, language)),
        ]),
    );
    const fonts = readFonts().metrics;
    const lacksGlyph = (text: string) =>
      runsOf(fonts, 'regular', text).some((run) => run.text.includes(missingGlyph));
    expect([...new Set(said)].filter(lacksGlyph)).toEqual([]);
  });
});
