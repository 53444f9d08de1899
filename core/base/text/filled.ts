/** A text with what stands in its braces filled in; what has no value stays as it is. */
export function filled(text: string, values: Readonly<Record<string, string>>): string {
  return text.replace(/\{(\w+)\}/g, (whole, name: string) => values[name] ?? whole);
}
