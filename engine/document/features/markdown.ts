/** Text into Markdown: what a person wrote must not become markup. */
export function escaped(text: string): string {
  return text.replace(/[\\`*_{}[\]()#+!|<>~]/g, '\\$&');
}

/** As code; a backtick within would end it. */
export function code(text: string): string {
  return `\`${text.replaceAll('`', "'")}\``;
}

export function paragraphs(lines: readonly string[]): string {
  return lines.join('\n\n');
}
