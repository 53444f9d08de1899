/** The test's window lays nothing out, so that no size of a plot is ever told. */
globalThis.ResizeObserver ??= class {
  observe() {
    return undefined;
  }
  unobserve() {
    return undefined;
  }
  disconnect() {
    return undefined;
  }
};
