/**
 * Cutting a text into lines as LSP does: `\n`, `\r\n` and a lone `\r` end a line and nothing else
 * does, so that line numbers are the editor's. A byte order mark stays in the first line, where it
 * counts as a blank.
 */
export interface RawLine {
  readonly text: string;
  /** `\n`, `\r\n`, `\r`, or nothing after the last line. */
  readonly lineEnd: string;
}

/** At least one line; texts and line ends in order make up the text again. */
export function splitLines(text: string): RawLine[] {
  const lines: RawLine[] = [];
  const ends = /\r\n?|\n/g;
  let start = 0;
  for (let match = ends.exec(text); match !== null; match = ends.exec(text)) {
    lines.push({ text: text.slice(start, match.index), lineEnd: match[0] });
    start = ends.lastIndex;
  }
  lines.push({ text: text.slice(start), lineEnd: '' });
  return lines;
}
