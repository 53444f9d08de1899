/** Scheme under which the page's files are served within the program, and nowhere else. */
export const pageScheme = 'borefolio';

/** Where the page is. */
export const pageAddress = `${pageScheme}://page/`;

/** Whether an address is of our own page. */
export function isPage(address: string): boolean {
  const url = URL.parse(address);
  return url?.protocol === `${pageScheme}:` && url.host === 'page';
}
