import fc from 'fast-check';
import { recordJsonSchema } from '../../../core/record/jsonSchema.ts';

/** The part of JSON Schema that the record's schema uses. */
interface Node {
  type?: string;
  const?: unknown;
  enum?: unknown[];
  minimum?: number;
  maximum?: number;
  format?: string;
  pattern?: string;
  properties?: Record<string, Node>;
  required?: string[];
  items?: Node;
  prefixItems?: Node[];
  oneOf?: Node[];
  anyOf?: Node[];
}

const day = fc
  .date({ min: new Date('1900-01-01'), max: new Date('2100-01-01'), noInvalidDate: true })
  .map((date) => date.toISOString().slice(0, 10));
const moment = fc
  .tuple(day, fc.constantFrom('T09:30:00Z', 'T23:59:59+05:45'))
  .map(([date, time]) => date + time);
const minute = day.map((date) => `${date}T09:30+01:00`);

function anyText({ format, pattern }: Node): fc.Arbitrary<unknown> {
  if (format === 'date') return day;
  if (format === 'date-time') return moment;
  if (format === 'uuid') return fc.uuid();
  return pattern === undefined ? fc.string() : minute;
}

function anyNumber({ type, minimum, maximum }: Node): fc.Arbitrary<unknown> {
  const min = Math.max(minimum ?? -1000, -1e6);
  const max = Math.min(maximum ?? 1000, 1e6);
  return type === 'integer'
    ? fc.integer({ min, max })
    : fc.double({ min, max, noNaN: true, noDefaultInfinity: true });
}

/** Known fields, some absent, and keys that no schema knows. */
function anyGroup({ properties = {}, required = [] }: Node): fc.Arbitrary<unknown> {
  const known = Object.entries(properties).map(([key, child]) => [key, anyOf(child)] as const);
  const unknown = fc.dictionary(
    fc.string().filter((key) => !Object.hasOwn(properties, key)),
    fc.jsonValue({ maxDepth: 2 }),
    { maxKeys: 2 },
  );
  const fields = fc.record(Object.fromEntries(known), { requiredKeys: required });
  return fc.tuple(fields, unknown).map(([own, others]) => ({ ...own, ...others }));
}

function anyOf(node: Node): fc.Arbitrary<unknown> {
  if (node.const !== undefined) return fc.constant(node.const);
  if (node.enum) return fc.constantFrom(...node.enum);
  const options = node.oneOf ?? node.anyOf;
  if (options) return fc.oneof(...options.map(anyOf));
  if (node.prefixItems) return fc.tuple(...node.prefixItems.map(anyOf));
  if (node.type === 'array') return fc.array(anyOf(node.items!), { maxLength: 3 });
  if (node.type === 'object') return anyGroup(node);
  if (node.type === 'boolean') return fc.boolean();
  return node.type === 'string' ? anyText(node) : anyNumber(node);
}

/** Any record that the published schema allows, with unknown keys at every depth. */
export const anyRecord = anyOf(recordJsonSchema() as Node) as fc.Arbitrary<Record<string, unknown>>;
