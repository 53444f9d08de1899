import { mkdirSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import { agsTables, southAustralianTables } from './derived.ts';

// Run once after a source file was added: node tests/data/writeDerived.ts
for (const [name, text] of Object.entries({ ...agsTables(), ...southAustralianTables() })) {
  const file = path.join(import.meta.dirname, name);
  mkdirSync(path.dirname(file), { recursive: true });
  writeFileSync(file, text);
}
