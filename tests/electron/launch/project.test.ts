import { describe, expect, it } from 'vitest';
import packageJson from '../../../package.json' with { type: 'json' };
import { isCurrentNode, nodeMajor, ownNode } from '../../../electron/launch/project.mjs';

describe('the Node that the programs run on', () => {
  it('is the one that the project carries, or newer', () => {
    expect(isCurrentNode('20.20.2')).toBe(false);
    expect(isCurrentNode('24.0.0')).toBe(true);
    expect(isCurrentNode('100.1.0')).toBe(true);
  });

  it('is of the major version that package.json asks for', () => {
    expect(packageJson.devDependencies.node.startsWith(`${nodeMajor}.`)).toBe(true);
    expect(packageJson.engines.node).toBe(`>=${nodeMajor}`);
  });

  it('has the file name of the machine’s kind', () => {
    expect(ownNode('win32')).toMatch(/node\.exe$/);
    expect(ownNode('linux')).toMatch(/node$/);
  });
});
