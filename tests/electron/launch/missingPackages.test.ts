import { describe, expect, it } from 'vitest';
import { missingPackages } from '../../../electron/launch/missingPackages.mjs';

const asked = {
  packages: {
    '': { version: '0.1.0' },
    'node_modules/one': { version: '1.0.0' },
    'node_modules/other-machine': { version: '2.0.0', optional: true },
  },
};

describe('packages that are missing', () => {
  it('are all that are not optional before the first install', () => {
    expect(missingPackages(asked, undefined)).toEqual(['node_modules/one']);
  });

  it('are none after an install without the parts for other machines', () => {
    const installed = { packages: { 'node_modules/one': { version: '1.0.0' } } };
    expect(missingPackages(asked, installed)).toEqual([]);
  });

  it('include one that is there in another version, optional or not', () => {
    const installed = {
      packages: {
        'node_modules/one': { version: '0.9.0' },
        'node_modules/other-machine': { version: '1.0.0' },
      },
    };
    expect(missingPackages(asked, installed)).toEqual([
      'node_modules/one',
      'node_modules/other-machine',
    ]);
  });
});
