import { designRateM3h } from '../../practice/reading/water.ts';
import type { WellRecord } from '../../record/schema.ts';
import { assumptions } from '../assumptions.ts';
import { exactly, fromAssumption, fromReckoned, fromRecord, reckoned } from '../reckon.ts';
import type { Reckoned } from '../reckoned.ts';
import { sources } from '../sources.ts';

const litresPerM3 = 1000;
const minutesPerHour = 60;

/** Water to pump off afterwards, at the least: it goes on until no chlorine is left. */
export function pumpOffLitres(water: Reckoned): Reckoned {
  const volumes = assumptions.pumpOffVolumes.value.most;
  return reckoned(
    'pumpOffLitres',
    exactly(water.value.most * volumes),
    'P = n · V',
    [fromAssumption('n', 'pumpOffVolumes'), fromReckoned('V', water)],
    sources.common,
  );
}

/** Minutes that it takes at the rate of the well; undefined where no rate is known. */
export function pumpOffMinutes(record: WellRecord, litres: Reckoned): Reckoned | undefined {
  const rateM3h = designRateM3h(record);
  if (rateM3h === undefined || rateM3h <= 0) return undefined;
  const path = record.layingOut?.rate === undefined ? 'pump.rate' : 'layingOut.rate';
  return reckoned(
    'pumpOffMinutes',
    exactly((litres.value.most / (rateM3h * litresPerM3)) * minutesPerHour),
    't = 60 · P / (1000 · Q)',
    [fromReckoned('P', litres), fromRecord('Q', exactly(rateM3h), 'm³/h', path)],
    sources.arithmetic,
  );
}
