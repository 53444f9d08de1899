import { broken } from '../ruleCodes.ts';
import { judged, type Rule } from '../rule.ts';
import { judgeSampled } from './sampled.ts';

/** No last reading stands past a value that rests on health. It declares no water safe. */
export const qualityAboveHealth: Rule = {
  id: 'quality.aboveHealth',
  figures: [],
  judge: (well) =>
    judgeSampled(well, ({ aboveHealth, unclear }) =>
      judged(
        aboveHealth.map(({ path, parameter, value, limit, unit }) =>
          broken('quality.aboveHealth', 'warning', path, {
            parameter,
            reading: value,
            allowed: limit,
            unit,
          }),
        ),
        unclear.map((path) => ({ what: 'waterResult', path })),
      ),
    ),
};
