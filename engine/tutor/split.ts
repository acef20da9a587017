/** Cuts a text into its questions: at question marks, ends of sentences and lines, and where "and" begins a new one. */

/** "… and where is …", "… and is it …": a conjunction before a word that begins a question. */
const CONJUNCTION =
  /(?:,\s*|\s+)(?:and|also|then|but)\s+(?=(?:also\s+)?(?:where(?:'?s)?|why|what(?:'?s)?|which|how|who|is|are|did|does|do|was|were|has|have|can|will|should|tell me|show me)\s+\S+\s+\S)/i;

export const MOST_QUESTIONS = 3;

export function splitQuestions(text: string): string[] {
  const result: string[] = [];
  // A full stop ends a sentence only before white space; `...` is an unknown stretch.
  for (const sentence of text.split(
    /(?<=[?!])(?<!\?\?\?)\s+|\?(?=\s*$)|[\r\n;]+|(?<=[^.\s]{2})\.\s+(?!\.)/,
  )) {
    for (const part of sentence.split(CONJUNCTION)) {
      const trimmed = part.replace(/[?!\s]+$/, '').trim();
      if (trimmed !== '') result.push(trimmed);
    }
  }
  if (result.length === 0 && text.trim() !== '') result.push(text.trim());
  return joinedByColon(result);
}

/** "Is this right?" and then the turns on a line of their own are one question. */
function joinedByColon(parts: readonly string[]): string[] {
  const result: string[] = [];
  for (const part of parts) {
    const last = result.at(-1);
    const onlyTurns =
      /^[([]?[UDLRFBMESudlrfbxyz]['’2w]?(?:\s|$|['’2UDLRFBMES)])/.test(part) &&
      !/[a-z]{3}/.test(part);
    if (
      last !== undefined &&
      onlyTurns &&
      /(?:right|correct|ok|okay|work|good|this|that|:)$/i.test(last)
    ) {
      result[result.length - 1] = `${last} ${part}`;
    } else result.push(part);
  }
  return result;
}
