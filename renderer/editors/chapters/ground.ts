import { describe } from '../../../core/drawing/describe.ts';
import type { LogInterval } from '../../../core/record/log.ts';
import { choiceWords, fieldWords as f, say, sheetWords } from '../../parts/words.ts';
import type { Block, FormBlock, TableBlock } from '../chapter.ts';
import { choiceField, flagField } from '../fields/choice.ts';
import { materialField, secondsField } from '../fields/ground.ts';
import { dayField, momentField } from '../fields/moment.ts';
import { amountField, depthField } from '../fields/number.ts';
import { longField, textField } from '../fields/text.ts';
import { fromWhereItEnded, likeTheLast, sampleAfterSample, together } from './starts.ts';

const required = { required: true };
const aside = { aside: true };
const method = () => choiceField('method', f.method, sheetWords().methods);

/** A sample is its material and Enter: where it came from follows from the one before. */
const samples = (): TableBlock => ({
  kind: 'table',
  heading: say.entry.samples,
  list: 'samples',
  columns: [
    depthField('from', f.from, required),
    depthField('to', f.to, required),
    materialField(),
    secondsField('qualifiers', f.qualifiers, aside),
    textField('colour', f.colour, aside),
  ],
  more: [
    choiceField('grain', f.grain, sheetWords().grains),
    textField('label', f.sampleLabel),
    textField('remark', f.remark),
  ],
  starts: sampleAfterSample,
  sort: { by: ['from'], label: say.table.sort },
  intervals: true,
  deed: 'makeLog',
});

/** An interval in words without its remarks, which are kept by themselves when rows are joined. */
const describeInterval = (row: unknown) =>
  describe({ ...(row as LogInterval), remarks: '' }, sheetWords());

const log = (): TableBlock => ({
  kind: 'table',
  heading: f.log,
  list: 'log',
  columns: [
    depthField('from', f.from, required),
    depthField('to', f.to, required),
    materialField(),
    secondsField('qualifiers', f.qualifiers, aside),
    textField('colour', f.colour),
    amountField('minutesPerMetre', f.minutesPerMetre, 'min/m'),
  ],
  more: [
    choiceField('grain', f.grain, sheetWords().grains),
    textField('consistency', f.consistency),
    choiceField('moisture', f.moisture, sheetWords().moisture),
    choiceField('weathering', f.weathering, sheetWords().weathering),
    flagField('fractured', f.fractured),
    choiceField('boundary', f.boundary, choiceWords.boundary),
    flagField('sampled', f.sampled),
    textField('sampleLabel', f.sampleLabel),
    choiceField('grainScheme', f.grainScheme, choiceWords.grainScheme),
    longField('remarks', f.remarks),
    longField('words', f.words),
  ],
  starts: fromWhereItEnded,
  sort: { by: ['from'], label: say.table.sort },
  intervals: true,
  describe: describeInterval,
});

const bore = (): FormBlock => ({
  kind: 'form',
  heading: f.bore,
  base: 'bore',
  fields: [
    method(),
    textField('rig', f.rig),
    dayField('startedOn', f.startedOn),
    dayField('finishedOn', f.finishedOn),
    depthField('depthReached', f.depthReached),
    depthField('depthFound', f.depthFound),
    textField('fluid', f.fluid),
    textField('additive', f.additive),
    amountField('fluidLost', f.fluidLost, 'L'),
    textField('remark', f.remark),
  ],
});

const sections = (): TableBlock => ({
  kind: 'table',
  heading: f.sections,
  list: 'bore.sections',
  columns: [
    depthField('from', f.from, required),
    depthField('to', f.to, required),
    amountField('diameter', f.diameter, 'mm', required),
    method(),
  ],
  more: [],
  starts: together(fromWhereItEnded, likeTheLast([method()], ['method'])),
  sort: { by: ['from'], label: say.table.sort },
  intervals: true,
});

const strikes = (): TableBlock => ({
  kind: 'table',
  heading: f.strikes,
  list: 'strikes',
  columns: [
    depthField('depth', f.depth, required),
    depthField('rise', f.rise),
    amountField('flow', f.flow, 'm³/h'),
    momentField('at', f.at),
  ],
  more: [amountField('afterMinutes', f.afterMinutes, 'min'), textField('remark', f.remark)],
  sort: { by: ['depth'], label: say.table.sort },
});

export const groundBlocks = (): readonly Block[] => [
  samples(),
  log(),
  strikes(),
  bore(),
  sections(),
];
