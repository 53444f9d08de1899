import { ok, refused, type Result } from '../../core/base/result.ts';
import type { WriteHandle } from './handles.ts';
import type { Access } from './lists.ts';
import {
  chooseNoTemplate,
  chooseTemplate,
  dropTemplate,
  listTemplates,
  putTemplate,
  usualTemplate,
  type KeptTemplate,
} from './tables/templates.ts';

export type { KeptTemplate } from './tables/templates.ts';

/** Most templates of an archive: its page shows all of them. */
export const mostTemplates = 12;

/** Templates of organisations, one of which papers may be made with. */
export interface Templates {
  list(): Result<readonly KeptTemplate[]>;
  /** The one that papers are made with; undefined where none was chosen. */
  usual(): Result<KeptTemplate | undefined>;
  /** Takes the place of the one with its name. The first of an archive becomes the usual one. */
  put(name: string, json: string): Result<KeptTemplate>;
  /** Makes one the usual one, or none. */
  choose(name: string | undefined): Result<void>;
  remove(name: string): Result<void>;
}

function put(db: WriteHandle, name: string, json: string, changedAt: string): Result<KeptTemplate> {
  const before = listTemplates(db);
  const known = before.find((one) => one.name === name);
  if (!known && before.length >= mostTemplates)
    return refused(
      'tooManyTemplates',
      `The archive has ${mostTemplates} templates already. Take one of them away first.`,
    );
  putTemplate(db, { name, json, changedAt });
  if (before.length === 0) chooseTemplate(db, name);
  return ok({ name, json, changedAt, usual: known?.usual ?? before.length === 0 });
}

function choose(db: WriteHandle, name: string | undefined): Result<void> {
  if (name === undefined) return ok(chooseNoTemplate(db));
  if (listTemplates(db).every((one) => one.name !== name))
    return refused(
      'noSuchTemplate',
      `The archive has no template ${name} any more. Choose one of the list.`,
    );
  chooseTemplate(db, name);
  return ok(undefined);
}

export function templatesIn({ reading, writing }: Access, now: () => string): Templates {
  return {
    list: () => reading((db) => ok(listTemplates(db))),
    usual: () => reading((db) => ok(usualTemplate(db))),
    put: (name, json) =>
      writing((db) => db.transaction(() => put(db, name, json, now())).immediate()),
    choose: (name) => writing((db) => db.transaction(() => choose(db, name)).immediate()),
    remove: (name) => writing((db) => ok(dropTemplate(db, name))),
  };
}
