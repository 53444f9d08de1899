import type { ReadingWords } from './reading.ts';

export const readingEnglish: ReadingWords = {
  finding: {
    title: 'Finding a well',
    says: [
      'Wells stand district by district, then by village, then by number as people count: KB-2 comes before KB-10.',
      'The contents lead to districts and villages; the indexes to each well by village, number and year. In the file, a line that ends in a page number is a link.',
      'A well without a number stands at the end of its village.',
    ],
  },
  papers: {
    title: 'What each paper holds',
    each: {
      asBuilt:
        'As-built drawing: the ground and the well in section to a stated scale, with depths, fills, water levels, tests, samples, photos and what remains to be looked at.',
      layingOut:
        'Laying-out sheet: pipes in the order in which they go in, marks, and fills step by step.',
      committee:
        'Committee sheet: for the village’s water users, with a plain picture, care through the year, what to keep away, and whom to call.',
      attachments:
        'Attachments: pictures that no paper of the binder shows, and a list of the other files that are kept with the record.',
    },
  },
  depths: {
    title: 'How depth is told',
    says: [
      'Depths are metres below ground level, measured down the hole. What stands above ground says so.',
      'Readings from the top of the casing were brought to the ground by the height of the casing.',
      'Elevations are those of the ground, above the datum that stands beside them.',
      'Each well’s paper says which revision of the record it shows. The archive may hold a newer one.',
    ],
  },
  units: {
    title: 'Units and signs of figures',
    says: [
      'm: metres. mm: millimetres, for diameters and slots. m³/h: cubic metres an hour. mg/l: milligrams a litre.',
      'A dash (–) stands where nothing was recorded: it does not mean nought. “<” stands before a detection limit that a result lay under.',
      'The median is the value in the middle: half of the wells lie under it, half over it.',
    ],
  },
  signs: {
    title: 'Signs of the map',
    says: [
      'Positions are WGS 84, as good as they were read in the field. A sign shows about where a well is, not where to dig.',
    ],
  },
  yields: {
    title: 'What a yield is',
    says: [
      'Safe rate: what the tests say the well can give in the dry season without drawing the water down too far.',
      'Where the tests do not tell it, the rate of the last constant-rate test stands, marked t; else that of the pump in use, marked p. They tell what was drawn, not what the well can stand.',
    ],
  },
  water: {
    title: 'Water quality',
    says: [
      'Results are compared with the guideline values of the set that is named. “Above” says that a result is past a value. Nothing here says that the water is safe.',
      'A sample tells of one moment: water can be fouled later. What was not tested is not known. The health authority decides what may be drunk.',
    ],
  },
  cautions: {
    title: 'Cautions',
    says: [
      'Local codes and the rules of the health and water authorities come before anything in this binder.',
      'Nobody goes down a well or a pit without gas test, harness, and people above: the air in it can kill.',
      'Before work at a well, look for power lines, and lock off electric pumps.',
      'Do not measure on a paper whose check line is not as long as it says.',
    ],
  },
};
