import type { SvgNode } from './node.ts';

const entities: Readonly<Record<string, string>> = {
  '&': '&amp;',
  '<': '&lt;',
  '>': '&gt;',
  '"': '&quot;',
};

/** What XML cannot hold even when escaped: control characters, lone halves of pairs. */
const notInXml = /[\p{Cc}\p{Cs}\ufffe\uffff]/gu;

function escaped(text: string): string {
  return text.replace(notInXml, ' ').replace(/[&<>"]/g, (letter) => entities[letter]!);
}

/** An element and all in it as XML. No white space is added: it could show in texts. */
export function markup(node: SvgNode): string {
  const attributes = Object.entries(node.attributes)
    .map(([name, value]) => ` ${name}="${escaped(value)}"`)
    .join('');
  const content = node.children?.map(markup).join('') ?? escaped(node.text ?? '');
  return content === ''
    ? `<${node.name}${attributes}/>`
    : `<${node.name}${attributes}>${content}</${node.name}>`;
}
