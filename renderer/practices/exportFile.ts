import type { InLanguages } from '../../core/practice/practice.ts';

/** Signs that a file's name cannot hold on one system or another. */
const unfit = /[\\/:*?"<>|\p{Cc}]+/gu;

/** A name for the file of a practice or of guideline values that every system takes. */
export function setFileName({ name, version }: { name: InLanguages; version: string }): string {
  return `${`${name.en} ${version}`.replace(unfit, '-').trim()}.json`;
}

/** A text in UTF-8 as base64. */
export function textInBase64(text: string): string {
  return btoa(String.fromCharCode(...new TextEncoder().encode(text)));
}
