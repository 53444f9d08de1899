/** Plain data of any depth: values, lists, and objects without a class of their own. */
function isHolder(value: unknown): value is Record<string, unknown> {
  return typeof value === 'object' && value !== null;
}

/** Whether two pieces of plain data say the same. What is one object is not looked into. */
export function same(a: unknown, b: unknown): boolean {
  if (Object.is(a, b)) return true;
  if (!isHolder(a) || !isHolder(b) || Array.isArray(a) !== Array.isArray(b)) return false;
  const keys = Object.keys(a);
  if (keys.length !== Object.keys(b).length) return false;
  return keys.every((key) => Object.hasOwn(b, key) && same(a[key], b[key]));
}

type List = readonly unknown[];
type Named = Readonly<Record<string, unknown>>;

function sharedList(before: List, now: List): List {
  let mixed: unknown[] | undefined;
  let asBefore = before.length === now.length;
  now.forEach((value, at) => {
    const part = sharing(before[at], value);
    if (part !== before[at]) asBefore = false;
    if (part !== value) (mixed ??= [...now])[at] = part;
  });
  return asBefore ? before : (mixed ?? now);
}

function sharedObject(before: Named, now: Named): Named {
  const keys = Object.keys(now);
  let mixed: Record<string, unknown> | undefined;
  let asBefore = keys.length === Object.keys(before).length;
  for (const key of keys) {
    const part = sharing(before[key], now[key]);
    if (part !== before[key] || !Object.hasOwn(before, key)) asBefore = false;
    if (part !== now[key]) (mixed ??= { ...now })[key] = part;
  }
  return asBefore ? before : (mixed ?? now);
}

/**
 * Plain data that says the same as `now`, in which every part that stood at the same place in
 * `before`, and says the same, is that very object: what changed can be told by identity.
 */
export function sharing<T>(before: unknown, now: T): T {
  if (Object.is(before, now) || !isHolder(now) || !isHolder(before)) return now;
  if (Array.isArray(now) !== Array.isArray(before)) return now;
  return Array.isArray(now)
    ? (sharedList(before as unknown as List, now) as T)
    : (sharedObject(before, now as Named) as T);
}
