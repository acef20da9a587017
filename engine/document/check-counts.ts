/** Counts that the author wrote beside a stage. */
import type { Span } from '../cube/place.ts';
import { countTurns } from '../notation/count.ts';
import { rangeIn } from './check-claims.ts';
import type { Judged } from './judged.ts';
import type { RawFinding } from './raw-finding.ts';

/** A count in a heading or label that is right in no metric. */
export function checkCounts(judged: Judged): RawFinding[] {
  const { script, stages } = judged;
  return stages.stages.flatMap((stage): RawFinding[] => {
    const { count } = stage;
    if (count === undefined || stage.line < judged.firstLine) return [];
    const counts = countTurns(script.codes, undefined, stage.first, stage.end);
    const { obtm, stm, etm, qtm } = counts;
    if (
      obtm === null ||
      stm === null ||
      etm === null ||
      [obtm, stm, etm, qtm].includes(count.value)
    )
      return [];
    return [
      {
        args: { code: 'count-differs', claimed: count.value, obtm, stm, etm },
        range: rangeIn(stage.line, count.span),
        ...recounted(judged, stage.line, count, obtm),
      },
    ];
  });
}

/** The count written anew, where its digits can be told from the rest. */
function recounted(
  { textOf }: Judged,
  line: number,
  { value, span }: { readonly value: number; readonly span: Span },
  obtm: number,
): Pick<RawFinding, 'fixes'> {
  const places = [...textOf(line).slice(span.start, span.end).matchAll(/\d+/g)].filter(
    (match) => Number(match[0]) === value,
  );
  if (places.length !== 1) return {};
  const start = span.start + places[0].index;
  const range = rangeIn(line, { start, end: start + places[0][0].length });
  return {
    fixes: [{ title: `Write ${String(obtm)}`, edits: [{ range, newText: String(obtm) }] }],
  };
}
