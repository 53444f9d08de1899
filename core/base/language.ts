/** Languages that the program speaks: English, French, Portuguese (ISO 639-1). */
export const languages = ['en', 'fr', 'pt'] as const;

export type Language = (typeof languages)[number];

/** How each language marks decimals. */
export const decimalMarks: Readonly<Record<Language, '.' | ','>> = { en: '.', fr: ',', pt: ',' };
