import type { PracticeFile } from '../../core/practice/practice.ts';

/** Signs that a file's name cannot hold on one system or another. */
const unfit = /[\\/:*?"<>|\p{Cc}]+/gu;

/** A name for a practice's file that every system takes. */
export function practiceFileName({ name, version }: PracticeFile): string {
  return `${`${name.en} ${version}`.replace(unfit, '-').trim()}.json`;
}

/** A text in UTF-8 as base64. */
export function textInBase64(text: string): string {
  return btoa(String.fromCharCode(...new TextEncoder().encode(text)));
}
