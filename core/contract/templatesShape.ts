import type { Template } from '../drawing/parts/headStrip.ts';

/** Most bytes of a logo: a larger one makes every paper heavy. */
export const largestLogo = 1_000_000;

/** A picture that was chosen together with a template that names its file. */
export interface LogoFile {
  readonly name: string;
  /** PNG or JPEG in base64. */
  readonly data: string;
}

/** A template of an organisation as the archive keeps it. */
export interface OwnTemplate {
  /** Name of its file, without the ending. */
  readonly name: string;
  readonly template: Template;
  /** Papers of the archive's wells are made with it. */
  readonly usual: boolean;
  /** ISO 8601. */
  readonly changedAt: string;
}

/** One that the archive keeps but this version cannot read, as from a newer one. */
export interface UnreadTemplate {
  readonly name: string;
  /** Papers are refused until another one, or none, is chosen. */
  readonly usual: boolean;
  readonly sentence: string;
}

export interface TemplateCalls {
  'templates.list': {
    takes: Record<string, never>;
    gives: { templates: readonly OwnTemplate[]; unread: readonly UnreadTemplate[] };
  };
  /**
   * Keeps a template, as its JSON file has it, in place of the one with its name; logos that it names
   * by their files are among `logos`. The first of an archive becomes the usual one. Refused as
   * `templateUnread` with every fault that it has, or as `tooManyTemplates`.
   */
  'templates.put': {
    takes: { name: string; template: object; logos: readonly LogoFile[] };
    gives: OwnTemplate;
  };
  /** Makes papers with another one, or with none where `name` is absent. */
  'templates.choose': { takes: { name?: string }; gives: null };
  'templates.remove': { takes: { name: string }; gives: null };
}
