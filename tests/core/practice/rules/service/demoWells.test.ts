import { expect, it } from 'vitest';
import { resolveWell } from '../../../../../core/model/resolveWell.ts';
import { practiceOf } from '../../../../../core/practice/choosePractice.ts';
import { serviceRules } from '../../../../../core/practice/rules/service/index.ts';
import type { WellRecord } from '../../../../../core/record/schema.ts';
import { demoWells, publishedWells } from '../../../../sheets/wells.ts';

function verdictsOf(record: WellRecord) {
  const well = { record, model: resolveWell(record), practice: practiceOf(record) };
  return serviceRules.map((rule) => rule.judge(well));
}

it('says of the demo wells what belongs to their stories, and misses nothing in them', () => {
  const said = demoWells.map(([name, record]) => [
    name,
    verdictsOf(record).flatMap(({ findings, missing }) => [
      ...findings.map(({ severity, code, path }) => `${severity} ${code} ${path}`),
      ...missing.map(({ what, path }) => `missing ${what} ${path}`),
    ]),
  ]);
  expect(Object.fromEntries(said)).toEqual({
    'collapsed-hole-38m.json': [],
    'dry-hole-26m.json': [],
    'hand-drilled-32m.json': [],
    'laid-out-45m.json': [],
    'shallow-direct-action-9m.json': [
      'note pad.small headworks.padLength',
      'note near.livestock site.surroundings[1].distance',
      'note pit.nearWater site.surroundings[0].pitBase',
    ],
    'sixty-intervals-58m.json': ['warning development.sandy development[2].sand'],
    'telescoped-in-granite.json': [],
    'two-screens-58m.json': [],
  });
});

it('raises no alarm over published wells, but for strikes dated before the hole', () => {
  expect(publishedWells.length).toBeGreaterThan(50);
  const said = publishedWells.flatMap(([name, record]) =>
    verdictsOf(record)
      .flatMap(({ findings }) => findings)
      .map(({ code, path, values }) => [name, code, path, values['earlierOn'], values['laterOn']]),
  );
  // As published: water was struck in these holes the day before they were begun.
  expect(said).toEqual([
    ['ags4/2370644 WS02', 'dates.order', 'strikes[0].at', '2020-03-09', '2020-03-08'],
    ['ags4/2370644 BH01', 'dates.order', 'bore.startedOn', '2020-03-07', '2020-03-06'],
  ]);
});
