import { describe, expect, it } from 'vitest';
import { wordGroups } from '../../../../core/exchange/words/lexicon.ts';
import { understandWords } from '../../../../core/exchange/words/understandWords.ts';
import { publishedDescriptions } from '../../../data/descriptions.ts';

/** `clay: slightly sand, gravel`; `?` before what is not known. */
function short(text: string): string {
  const { material, qualifiers, known } = understandWords(text);
  const seconds = qualifiers.map(({ material, degree }) => (degree ? `${degree} ` : '') + material);
  return `${known ? '' : '?'}${material}${seconds.length ? ': ' : ''}${seconds.join(', ')}`;
}

describe('words of other people’s logs', () => {
  it.each([
    ['Sandy clay with gravel', 'clay: sand, gravel'],
    [
      'slightly sandy very gravelly CLAY. Gravel is fine flint.',
      'clay: slightly sand, very gravel',
    ],
    ['BLUE CLAY AND LIMESTONE PEBBLES', 'clay: gravel'],
    ['Sand & Gravel', 'sand: gravel'],
    ['Clay grey sandy', 'clay: sand'],
    ['MADE GROUND: Soft brown sandy CLAY', 'madeGround: sand, clay'],
    ['Possible MADE GROUND: Soft brown sandy CLAY', 'clay: sand'],
    ['Clayey angular mudstone GRAVEL', 'gravel: clay'],
    ['Weak SILTSTONE. Recovered as gravel', 'siltstone'],
    ['Weak siltstone recovered as sandy GRAVEL', 'siltstone'],
    ['Firm clay (possibly shale)', 'clay'],
    ['Clay, no gravel', 'clay'],
    ['No recovery', 'noSample'],
  ])('understands English: %s', (words, meant) => {
    expect(short(words)).toBe(meant);
  });

  it.each([
    ['Argile sableuse', 'clay: sand'],
    ['Argile légèrement sableuse à graviers', 'clay: slightly sand, gravel'],
    ['Grès argileux très altéré', 'sandstone: clay'],
    ['Sables fins et graviers', 'sand: gravel'],
    ['Arène granitique', 'saprolite'],
    ['Cuirasse latéritique', 'laterite'],
    ['TERRE VÉGÉTALE', 'topsoil'],
    ['Schiste argileux noir', 'shale'],
  ])('understands French: %s', (words, meant) => {
    expect(short(words)).toBe(meant);
  });

  it.each([
    ['Argila muito arenosa', 'clay: very sand'],
    ['Areia grossa com cascalho', 'sand: gravel'],
    ['Solo laterítico', 'soil: laterite'],
    ['Calcário', 'limestone'],
    ['Sem amostra', 'noSample'],
    ['Xisto com quartzo', 'schist: quartz'],
  ])('understands Portuguese: %s', (words, meant) => {
    expect(short(words)).toBe(meant);
  });

  it.each([
    ['GRVL', 'gravel'],
    ['SDCY', 'clay: sand'],
    ['sm', 'sand: silt'],
  ])('understands the code %s where it fills the cell', (words, meant) => {
    expect(short(words)).toBe(meant);
  });

  it.each([
    'Clay or shale',
    'sand/gravel',
    'Brown clay gravel',
    'Clay bands shale',
    'Gravel pack put in',
    'Possible bedrock',
    'Sandwich of nothing',
    'constructor __proto__',
    'Very clayey',
    '',
  ])('leaves open what can be read in two ways or names nothing: %s', (words) => {
    expect(understandWords(words)).toEqual({ material: 'other', qualifiers: [], known: false });
  });

  it('looks at the beginning of a text alone, so that a giant cell costs nothing', () => {
    expect(short(`Clay ${'x '.repeat(500_000)} with gravel`)).toBe('clay');
  });

  it('names a source for each group of words, and none that is a second one of another', () => {
    expect(wordGroups.filter(({ source }) => source.length < 10)).toEqual([]);
    const codes = wordGroups.flatMap((group) => Object.keys(group.codes ?? {}));
    expect(codes).toEqual([...new Set(codes)]);
  });
});

describe('words of published logs', () => {
  const published = publishedDescriptions();

  it('knows 511 of 528 descriptions, and leaves open the others', () => {
    const known = published.filter(({ words }) => understandWords(words).known);
    expect([known.length, published.length]).toEqual([511, 528]);
    const open = published.filter(({ words }) => !understandWords(words).known);
    expect([...new Set(open.map(({ words }) => words.trim().slice(0, 60)))]).toEqual([
      'Clay bands shale',
      'Clay or shale',
      'Carwoola beds yellow minor pink sandstone farctured with gra',
      'Brown clay gravel',
      'Black gravel clay',
      'Driller',
      'Yellow, silty clay sandstone top of carwoola bed',
      'Grey - pink & yellow silty clay sandstone - gravel',
      'Base of carwoola beds',
      'Ckat',
      'Very clayey',
      'Plastic pipe installed as ground level made up using granula',
      'Plastic pipe installed to allow drilling through platform cr',
      'Medium Strong, locally weak, grey, fine to medium grained SC',
      'Weak/ Locally medium Strong, locally weak, grey, fine to med',
      'Recovered as fine to coarse subangular gravel sized micaceou',
      'Recovered as red brown mottled grey fine to coarse subangula',
    ]);
  });

  it('never contradicts the code that the publisher gave to the same row', () => {
    const contradicted = published.filter(({ words, code }) => {
      const [meant, said] = [understandWords(code), understandWords(words)];
      return meant.known && said.known && meant.material !== said.material;
    });
    expect(contradicted.map(({ words, code }) => `${code}: ${words}`)).toEqual([]);
  });

  it('reads every tenth description as reviewed by hand', () => {
    const sample = published.filter((_, at) => at % 10 === 0);
    const lines = sample.map(({ words }) => `${short(words)} < ${words.trim().slice(0, 80)}`);
    expect([...new Set(lines)]).toEqual([
      'shale < Shale broken',
      'clay < Clay',
      'clay < Clay black',
      'clay: gravel < Clay reddish gravel water supply',
      'gravel < Gravel',
      'gravel < Gravel water supply',
      'gravel < Gravel dirty',
      'shale < Shale water supply',
      'sand: clay < Sand water bearing dirty clay bands',
      'clay: gravel < Clay gravel stones large',
      'gravel: sand < Gravel sand',
      'sand: clay < Sands, with sandy clay',
      'topsoil: clay < Topsoil clayey',
      'clay < Clay dark plastic',
      'clay < Clay plastic',
      'sandstone < Sandstone',
      '?other < Black gravel clay',
      'shale < Soft red shale',
      'gravel < Gravel water bearing bands',
      'gravel: clay < Gravel large dry claybound',
      'sand < Sand water bearing coarse cemented',
      'sand < Sand coarse water bearing',
      'clay < Clay grey',
      'clay < Clay dark brown waddy',
      'topsoil < Topsoil',
      '?other < Base of carwoola beds',
      'sandstone < Medium grained sandstone',
      'clay < Clay yellow grey',
      'clay: sand < Clay grey yellow sandy',
      'gravel: clay < Gravel water bearing large clay bands',
      'clay: gravel < Clay dark khaki gravel',
      'clay < Clay white sticky',
      'sand: gravel < Sand yellow cemented gravel',
      'clay: slightly gravel, sand, silt < Soft to firm, fissured reddish brown mottled greenish grey slightly gravelly san',
      'clay: slightly sand, gravel, silt < Stiff light grey slightly sandy gravelly silty CLAY. Gravel lithorelics fine to ',
      'clay: slightly sand, gravel, silt < Firm reddish brown slightly sandy gravelly silty CLAY. Gravel is subangular to s',
      'clay: slightly gravel, silt < Very stiff reddish brown with occasional light grey mottling slightly gravelly s',
      'madeGround: sand, gravel < MADE GROUND: Brown sandy Gravel. Gravel is fine to coarse sub-angular to sub-rou',
      'gravel: clay, silt, sand < Loose brown clayey silty sandy GRAVEL. Gravel is fine to coarse sub-angular to s',
      '?other < Recovered as fine to coarse subangular gravel sized micaceous siltstone fragment',
      'clay: very sand < Possible MADE GROUND:  Soft extremely low strength brown to light brown very san',
      'clay: very sand < Possible MADE GROUND:  Soft extremely low to very low strength brown with grey m',
      'clay: sand < Possible MADE GROUND:  Soft low strength brown sandy CLAY with occasional rootle',
      'madeGround: sand, clay, gravel < MADE GROUND:  Very dark brown sandy clayey fine to coarse angular GRAVEL of bric',
      'clay: slightly gravel, sand < Possible MADE GROUND:  Soft very low strength brown with orange and grey mottlin',
      'madeGround: slightly silt, sand, gravel < MADE GROUND:  Black slightly silty sandy fine to coarse angular to subrounded GR',
      'clay: very gravel < Stiff medium plasticity light grey with orange brown oxidation very gravelly CLA',
      'peat < Veen',
    ]);
  });
});
