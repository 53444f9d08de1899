/** Choice of a pump. Depths and lengths come in as texts with their unit. */
export const pumpChoice = {
  title: 'Which pump suits',
  inputs: 'What it is chosen from besides the other chapters',
  repair: {
    caretaker: 'caretaker',
    areaMechanic: 'area mechanic',
    workshop: 'electrical workshop',
  },
  noPump: 'A dry or sealed well takes no pump.',
  rateBy: {
    analysed: 'The well’s rate is the safe rate by its pumping tests.',
    tested: 'The well’s rate is that of its last constant-rate test.',
    laidOut: 'No test gives the well’s rate: the rate that was laid out for stands in for it.',
    pumpInUse: 'No test gives the well’s rate: the rate of the pump in use stands in for it.',
  },
  missing: 'Still needed:',
  speaksFor: 'For it',
  against: 'Against it',
  effects: { rulesOut: 'rules it out', doubts: 'a doubt', notes: 'a note' },
  intake: 'Where the intake may hang',
  levels: (level: string, foot: string) =>
    `Water while pumping in the dry season at ${level}, foot of the well at ${foot}:`,
  margins: (under: string, above: string) =>
    `${under} under that level and ${above} above the foot are left.`,
  parts: 'What leads from the intake to the surface',
  pieces: (count: string, each: string, long: string) => `${count} of ${each} for ${long}`,
  spaced: (count: string, each: string) => `${count}, one each ${each}`,
  quantities: 'Figures',
  cautions: 'To mind',
  named: (what: string, which: string) => `${what}: ${which}`,
  formula: 'Formula',
  source: 'Source',
  go: 'Go to the field',
  ofKind: 'printed for this kind',
  ofWell: 'from levels and tubing',
  assumed: 'assumed',
};
