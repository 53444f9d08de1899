import { exactly, fromRecord, reckoned, scaled, sumOf } from '../reckon.ts';
import type { QualityResult } from '../results.ts';
import { sources } from '../sources.ts';
import { conversion } from '../units/convert.ts';
import { rangeOf, type FormIn, type SampleReadings } from './ofSample.ts';

/** Calcium and magnesium of a water as the lime that is as hard. */
export function hardnessOf(
  samples: readonly SampleReadings[],
  formIn: FormIn,
): QualityResult['hardness'] {
  for (const { sample, readings } of samples) {
    const [calcium, magnesium] = [readings.get('calcium'), readings.get('magnesium')];
    if (!calcium || !magnesium) continue;
    const factors = ['calcium', 'magnesium'].map((id) =>
      conversion(id, { unit: 'mg/l', as: formIn(id) }, { unit: 'mg/l', as: 'CaCO3' }),
    );
    const [a, b] = factors.map((way) => (way.ok ? way.factor : undefined));
    if (a === undefined || b === undefined) return undefined;
    const [ca, mg] = [rangeOf(calcium), rangeOf(magnesium)];
    const inputs = [
      { symbol: 'a', value: exactly(a), unit: '1', from: 'chemistry' } as const,
      fromRecord('Ca', ca, 'mg/l', calcium.path),
      { symbol: 'b', value: exactly(b), unit: '1', from: 'chemistry' } as const,
      fromRecord('Mg', mg, 'mg/l', magnesium.path),
    ];
    const value = sumOf([scaled(ca, a), scaled(mg, b)]);
    return {
      sample,
      mgL: reckoned('hardnessMgL', value, 'H = a · Ca + b · Mg', inputs, sources.hardness),
    };
  }
  return undefined;
}
