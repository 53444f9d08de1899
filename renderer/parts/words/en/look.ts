export const look = {
  title: 'Language and look',
  language: 'Language',
  contrast: 'Contrast',
  highContrast: 'High contrast',
};
