/** Text into Markdown: what a person wrote must not become markup. */
export function escaped(text: string): string {
  return text.replace(/[\\`*_{}[\]()#+!|<>~]/g, '\\$&');
}

/** Longer sequences are cut: nobody reads them in a hover. */
const LONGEST = 300;

export function shortened(text: string): string {
  return text.length <= LONGEST ? text : `${text.slice(0, LONGEST)} …`;
}

/** As code, shortened; a backtick within would end it. */
export function code(text: string): string {
  return `\`${shortened(text).replaceAll('`', "'")}\``;
}

export function paragraphs(lines: readonly string[]): string {
  return lines.join('\n\n');
}
