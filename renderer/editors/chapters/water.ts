import type { WellRecord } from '../../../core/record/schema.ts';
import { choiceWords, fieldWords as f, say } from '../../parts/words.ts';
import type { Block, FoldBlock, StackBlock, TableBlock, TableShape } from '../chapter.ts';
import { choiceField, flagField } from '../fields/choice.ts';
import { bucketField, minutesField } from '../fields/reading.ts';
import { momentField } from '../fields/moment.ts';
import { amountField, countField, depthField, numberField } from '../fields/number.ts';
import { textField } from '../fields/text.ts';
import { seriesLooks } from '../seriesLooks.ts';
import { likeTheLast } from './starts.ts';

const required = { required: true };
const rate = () => amountField('rate', f.rate, 'm³/h');

const datum = () => choiceField('datum', f.datum, choiceWords.datum, required);

const levels = (): TableBlock => ({
  kind: 'table',
  heading: f.levels,
  list: 'levels',
  columns: [
    depthField('reading', f.reading, required),
    datum(),
    choiceField('state', f.state, choiceWords.levelState),
    momentField('at', f.at),
  ],
  more: [
    rate(),
    amountField('minutesPumped', f.minutesPumped, 'min'),
    textField('remark', f.remark),
  ],
  starts: likeTheLast([datum()], ['datum']),
});

/** Levels reduced to the ground and what they say of the year. */
const leveled = (): FoldBlock => ({
  kind: 'fold',
  heading: say.water.levels.title,
  isThere: ({ levels: read = [] }) => read.length > 0,
  holds: () => false,
  blocks: [{ kind: 'view', view: 'levels' }],
});

const development = (): TableBlock => ({
  kind: 'table',
  heading: f.development,
  list: 'development',
  columns: [
    choiceField('method', f.method, choiceWords.development),
    momentField('startedAt', f.startedAt),
    momentField('endedAt', f.endedAt),
  ],
  more: [
    rate(),
    amountField('turbidity', f.turbidity, 'NTU'),
    amountField('sand', f.sand, 'mg/L'),
    textField('remark', f.remark),
  ],
});

/** How development went, over the hours worked. */
const developed = (): FoldBlock => ({
  kind: 'fold',
  heading: say.water.development.title,
  isThere: ({ development: events = [] }) => events.length > 0,
  holds: () => false,
  blocks: [{ kind: 'view', view: 'development' }],
});

/** Readings of a test; times of day can be typed where its start has one. */
const seriesTable = (startedAt: unknown): TableShape => ({
  heading: f.series,
  columns: [
    minutesField('minutes', f.minutes, startedAt, required),
    depthField('reading', f.reading, required),
    bucketField('rate', f.rate),
    countField('step', f.step),
  ],
  more: [],
  starts: likeTheLast([countField('step', f.step)], ['step']),
  sort: { by: ['step', 'minutes'], label: say.table.sortByTime },
  deed: 'takeReadings',
  looks: seriesLooks,
});

const tests = (): StackBlock => ({
  kind: 'stack',
  heading: f.tests,
  list: 'tests',
  title: f.test,
  fields: [
    choiceField('kind', f.kind, choiceWords.test, required),
    momentField('startedAt', f.startedAt),
    choiceField('datum', f.datum, choiceWords.datum),
    depthField('restLevel', f.restLevel),
    rate(),
    amountField('minutesPumped', f.minutesPumped, 'min'),
    depthField('pumpIntake', f.pumpIntake),
    textField('remark', f.remark),
  ],
  inner: 'series',
  table: seriesTable(undefined),
  tableBy: { field: 'startedAt', table: seriesTable },
  adds: [
    { label: f.addStep, item: { kind: 'step' } },
    { label: f.addConstant, item: { kind: 'constantRate' } },
    { label: f.addRecovery, item: { kind: 'recovery' } },
  ],
});

const quality = (): StackBlock => ({
  kind: 'stack',
  heading: f.quality,
  list: 'quality',
  title: f.sample,
  fields: [
    momentField('takenAt', f.takenAt),
    textField('takenBy', f.takenBy),
    textField('place', f.samplePlace),
    textField('laboratory', f.laboratory),
    momentField('receivedAt', f.receivedAt),
    textField('remark', f.remark),
  ],
  inner: 'results',
  table: {
    heading: f.results,
    columns: [
      textField('parameter', f.parameter, required),
      numberField('value', f.value),
      textField('unit', f.unit),
      flagField('below', f.below),
    ],
    more: [
      textField('as', f.as),
      textField('method', f.method),
      choiceField('where', f.where, choiceWords.where),
    ],
  },
  adds: [{ label: f.addSample, item: {} }],
});

const disinfection = (): TableBlock => ({
  kind: 'table',
  heading: f.disinfection,
  list: 'disinfection',
  columns: [
    momentField('at', f.at),
    textField('product', f.product),
    amountField('dose', f.dose, 'mg/L'),
    amountField('contactHours', f.contactHours, 'h'),
  ],
  more: [
    numberField('strength', f.strength, { unit: '%' }, { least: 0, most: 100 }),
    amountField('productMass', f.productMass, 'g'),
    momentField('pumpedOffAt', f.pumpedOffAt),
    amountField('residual', f.residual, 'mg/L'),
    textField('remark', f.remark),
  ],
});

/** Samples beside guideline values. */
const compared = (): FoldBlock => ({
  kind: 'fold',
  heading: say.quality.title,
  isThere: ({ quality: samples = [] }) => samples.length > 0,
  holds: () => false,
  blocks: [{ kind: 'view', view: 'quality' }],
});

/** What a disinfection takes, step by step; there is one as soon as there is a hole. */
const dosing = (): FoldBlock => ({
  kind: 'fold',
  heading: say.disinfection.title,
  isThere: ({ strings = [], bore }) => strings.length > 0 || (bore?.sections ?? []).length > 0,
  holds: () => false,
  blocks: [{ kind: 'view', view: 'disinfection' }],
});

const isTested = ({ tests: all = [] }: WellRecord) => all.length > 0;

/** What each test says, with its plots. */
const analysed = (): FoldBlock => ({
  kind: 'fold',
  heading: say.water.tests.title,
  isThere: isTested,
  holds: (path) => /^tests\[\d+\]\.window/.test(path),
  blocks: [{ kind: 'view', view: 'tests' }],
});

/** What the well can give in the dry season. */
const safe = (): FoldBlock => ({
  kind: 'fold',
  heading: say.water.safe.title,
  isThere: isTested,
  holds: () => false,
  blocks: [{ kind: 'view', view: 'safeRate' }],
});

export const waterBlocks = (): readonly Block[] => [
  levels(),
  leveled(),
  development(),
  developed(),
  tests(),
  analysed(),
  safe(),
  quality(),
  compared(),
  disinfection(),
  dosing(),
];
