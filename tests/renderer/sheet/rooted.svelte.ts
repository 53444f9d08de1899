/** Makes something whose effects live until they are ended, as in a component. */
export function rooted<T>(make: () => T): { readonly made: T; readonly end: () => void } {
  let made: T | undefined;
  const end = $effect.root(() => {
    made = make();
  });
  return { made: made as T, end };
}
