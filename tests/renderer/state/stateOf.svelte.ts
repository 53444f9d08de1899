/** State of a test that what is derived from it follows. */
export function stateOf<T extends object>(first: T) {
  let now = $state.raw(first);
  return {
    get now() {
      return now;
    },
    set(next: Partial<T>) {
      now = { ...now, ...next };
    },
  };
}
