/**
 * Binds the spaces that French sets beside its high marks, so that none of these marks begins or
 * ends a line. Other languages set no such spaces and stay as they are.
 */
export function bindMarks(text: string): string {
  return text.replace(/ (?=[;:!?»])|(?<=«) /g, '\u00a0');
}
