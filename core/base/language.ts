/** Languages that the program speaks: English, French, Portuguese (ISO 639-1). */
export const languages = ['en', 'fr', 'pt'] as const;

export type Language = (typeof languages)[number];

/** How each language marks decimals. */
export const decimalMarks: Readonly<Record<Language, '.' | ','>> = { en: '.', fr: ',', pt: ',' };

/** The first of some BCP 47 tags whose language the program speaks; English where it speaks none. */
export function languageFor(tags: readonly string[]): Language {
  const spoken = tags.map((tag) => tag.toLowerCase().split('-')[0]);
  return spoken.flatMap((one) => languages.filter((language) => language === one))[0] ?? 'en';
}
