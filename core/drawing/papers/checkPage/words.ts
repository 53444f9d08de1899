import type { Language } from '../../../base/language.ts';

/** Words of the check page alone, in one language. */
export interface CheckPageWords {
  readonly title: string;
  readonly subject: string;
  /** What to measure, and what it tells. */
  readonly measure: string;
  /** What to do where a line is not 100\u00a0mm. */
  readonly mend: string;
  readonly marks: string;
  readonly across: string;
  readonly down: string;
  readonly hatches: string;
  readonly pens: string;
  /** To be filled in by hand. */
  readonly fields: Readonly<Record<'printer' | 'date' | 'across' | 'down', string>>;
}

const english: CheckPageWords = {
  title: 'Check page for the printer',
  subject: 'Check page: does the printer keep the scale?',
  measure:
    'Measure both lines below with a steel rule, between the outer edges of their end marks. Where both are 100\u00a0mm long, to half a millimetre, sheets from this printer may be scaled from.',
  mend: 'If a line is not 100\u00a0mm long: print this page again at “actual size” or 100\u00a0%, with “fit to page” and “shrink” switched off, on paper of the size named above. If it is still not 100\u00a0mm, do not scale from sheets of this printer; read their figures.',
  marks:
    'The corner marks stand 10 mm from the edges of the paper, 20 mm on the left. If one is missing, the printer does not reach the frame of the sheets.',
  across: '100\u00a0mm across',
  down: '100\u00a0mm down',
  hatches: 'Hatches: each stands apart from the others, on a copy too',
  pens: 'Lines, mm: the thinnest is whole, neighbours differ',
  fields: {
    printer: 'Printer',
    date: 'Date',
    across: 'Measured across, mm',
    down: 'Measured down, mm',
  },
};

const french: CheckPageWords = {
  title: 'Page de contrôle de l’imprimante',
  subject: 'Page de contrôle\u00a0: l’imprimante respecte-t-elle l’échelle\u00a0?',
  measure:
    'Mesurez les deux traits ci-dessous avec un réglet métallique, entre les bords extérieurs de leurs repères. Si les deux font 100\u00a0mm, à un demi-millimètre près, on peut mesurer sur les feuilles sorties de cette imprimante.',
  mend: 'Si un trait ne fait pas 100\u00a0mm\u00a0: imprimez de nouveau cette page en «\u00a0taille réelle\u00a0» ou à 100\u00a0%, sans «\u00a0ajuster à la page\u00a0» ni «\u00a0réduire\u00a0», sur du papier du format indiqué ci-dessus. S’il ne fait toujours pas 100\u00a0mm, ne mesurez pas sur les feuilles de cette imprimante\u00a0; lisez les cotes.',
  marks:
    'Les repères d’angle sont à 10 mm des bords du papier, à 20 mm du bord gauche. S’il en manque un, l’imprimante n’atteint pas le cadre des feuilles.',
  across: '100\u00a0mm en largeur',
  down: '100\u00a0mm en hauteur',
  hatches: 'Figurés\u00a0: chacun se distingue des autres, même photocopié',
  pens: 'Traits, mm\u00a0: le plus fin est continu, les voisins diffèrent',
  fields: {
    printer: 'Imprimante',
    date: 'Date',
    across: 'Mesuré en largeur, mm',
    down: 'Mesuré en hauteur, mm',
  },
};

const portuguese: CheckPageWords = {
  title: 'Página de verificação da impressora',
  subject: 'Página de verificação: a impressora mantém a escala?',
  measure:
    'Meça as duas linhas abaixo com uma régua de aço, entre os bordos exteriores das suas marcas. Se ambas tiverem 100\u00a0mm, com meio milímetro de tolerância, pode medir-se nas folhas desta impressora.',
  mend: 'Se uma linha não tiver 100\u00a0mm: imprima de novo esta página em “tamanho real” ou a 100\u00a0%, sem “ajustar à página” nem “reduzir”, em papel do formato indicado acima. Se ainda não tiver 100\u00a0mm, não meça nas folhas desta impressora; leia as cotas.',
  marks:
    'As marcas dos cantos ficam a 10 mm dos bordos do papel, a 20 mm do lado esquerdo. Se faltar alguma, a impressora não alcança a moldura das folhas.',
  across: '100\u00a0mm na largura',
  down: '100\u00a0mm na altura',
  hatches: 'Tramas: cada uma distingue-se das outras, mesmo fotocopiada',
  pens: 'Linhas, mm: a mais fina é contínua, as vizinhas diferem',
  fields: {
    printer: 'Impressora',
    date: 'Data',
    across: 'Medido na largura, mm',
    down: 'Medido na altura, mm',
  },
};

const catalogues: Readonly<Record<Language, CheckPageWords>> = {
  en: english,
  fr: french,
  pt: portuguese,
};

/** The words of the check page in a language. */
export function checkPageWordsIn(language: Language): CheckPageWords {
  return catalogues[language];
}
