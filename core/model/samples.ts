import type { Finding } from '../base/finding.ts';
import type { DepthM } from '../base/units.ts';
import type { GroundSample } from '../record/samples.ts';
import { found, type Resolved } from './findings.ts';
import { roundDepth } from './range.ts';
import type { SampleModel } from './wellModel.ts';

function placeSample({ from, to }: GroundSample, at: number): SampleModel {
  const [a, b] = [roundDepth(from), roundDepth(to)];
  return { fromM: Math.min(a, b), toM: Math.max(a, b), path: `samples[${at}]` };
}

/**
 * Where the samples of the ground came from. A sample may come from one depth, so its range may
 * have no length; one written the wrong way round is turned.
 */
export function resolveSamples(
  samples: readonly GroundSample[],
  holeM: DepthM | undefined,
): Resolved<SampleModel[]> {
  const value = samples.map(placeSample);
  const findings = samples.flatMap(({ from, to }, at): Finding[] => {
    const { fromM, toM, path } = value[at]!;
    return [
      ...(from > to ? [found('sample.reversed', path, {}, { fromM, toM })] : []),
      ...(holeM !== undefined && toM > holeM
        ? [found('sample.belowHole', path, { depthM: holeM }, { fromM: holeM, toM })]
        : []),
    ];
  });
  return { value, findings };
}
