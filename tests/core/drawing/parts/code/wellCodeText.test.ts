import { describe, expect, it } from 'vitest';
import { wellCodeText } from '../../../../../core/drawing/parts/code/wellCodeText.ts';
import { record } from '../../../model/well.ts';

const hash = 'ab'.repeat(32);

describe('what the code of a well tells', () => {
  // RFC 5870, 3.4: geo:<lat>,<lon>;u=<metres>, then parameters with a value after an equals sign.
  it('is a geo address with uncertainty, number, revision and hash', () => {
    const site = { latitude: -6.5341712, longitude: 1.4, positionAccuracy: 4 };
    const told = wellCodeText(record({ identity: { number: 'KV-25-011' }, site }), {
      revision: 3,
      recordHash: hash,
    });
    expect(told).toBe(`geo:-6.534171,1.4;u=4;well=KV-25-011;rev=3;sha256=${hash}`);
  });

  it('has its parameters alone where half a position or none is known', () => {
    const half = record({ identity: { number: 'E-01' }, site: { latitude: 1 } });
    expect(wellCodeText(half, {})).toBe('well=E-01');
    expect(wellCodeText(record({}), { recordHash: hash })).toBe(`sha256=${hash}`);
  });

  it('is absent where a well cannot be told from others', () => {
    expect(wellCodeText(record({}), { revision: 3 })).toBeUndefined();
    expect(wellCodeText(record({ identity: { number: ' ' } }), {})).toBeUndefined();
  });

  // RFC 5870, 3.5: letters outside the set stand as per cent signs of their UTF-8.
  it('writes letters that an address cannot hold as per cent signs', () => {
    expect(wellCodeText(record({ identity: { number: 'É;2=3\ud800' } }), {})).toBe(
      'well=%C3%89%3B2%3D3',
    );
  });

  it('cuts a number without end between two letters', () => {
    const told = wellCodeText(record({ identity: { number: `${'x'.repeat(30)}É` } }), {});
    expect(told).toBe(`well=${'x'.repeat(30)}`);
  });
});
