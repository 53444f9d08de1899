export type * from './calls.ts';
export type * from './events.ts';
export * from './host.ts';
export { callNames, checkCall, joinAreas, type CheckedCall } from './check.ts';
