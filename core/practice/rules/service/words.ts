/** What has its day in the life of a well. */
export type WellEvent =
  | 'siteAgreed'
  | 'drillingStarted'
  | 'drillingFinished'
  | 'waterStruck'
  | 'levelRead'
  | 'developmentStarted'
  | 'testStarted'
  | 'disinfected'
  | 'waterSampled'
  | 'headworksBuilt'
  | 'pumpSet'
  | 'signed';

/** Where something lies from the well. */
export type SlopeWord = 'uphill' | 'level' | 'downhill' | 'slopeUnknown';

/** What a record is to hold when a well is handed over. */
export const handoverItems = [
  'wellNumber',
  'client',
  'village',
  'position',
  'elevation',
  'surroundings',
  'purpose',
  'contractor',
  'supervisor',
  'drillingDates',
  'permit',
  'method',
  'holeDiameter',
  'holeDepth',
  'groundLog',
  'groundSamples',
  'waterStrikes',
  'casingTally',
  'slotWidth',
  'annulusFills',
  'developed',
  'restLevelDated',
  'pumpingTest',
  'chlorinated',
  'waterAnalysed',
  'padAndDrain',
  'pumpAndDepth',
  'committee',
  'supervisorMark',
  'reason',
  'sealing',
] as const;

export type HandoverItem = (typeof handoverItems)[number];

/** Values of rules of this area that are kinds: each has its word in every language. */
export type ServiceWord = WellEvent | SlopeWord | HandoverItem;
