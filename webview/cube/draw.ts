/** The parts of the cube view above the strip. */
import { cubeScene } from '../../engine/picture/cube-scene.ts';
import { byId, drawScene, element } from '../dom.ts';
import type { BlockView, Looks, PlaceView } from '../messages.ts';

const KINDS = { solve: 'Solve', sequence: 'Sequence', aside: 'Aside' } as const;

const STARTS: Readonly<Record<BlockView['startFrom'], string>> = {
  scramble: 'from its scramble',
  net: 'from a given state',
  inverse: 'taken to end solved',
  any: 'shown from a solved cube',
  place: 'from where it stands',
  unknown: 'start unknown',
};

export function drawHead(block: BlockView): void {
  byId('title').textContent = block.title === '' ? KINDS[block.kind] : block.title;
  const facts = [
    block.kind === 'solve' ? '' : KINDS[block.kind].toLowerCase(),
    block.method,
    block.base === '' ? '' : `${block.base} base`,
    STARTS[block.startFrom],
    block.turns === null ? 'too many turns to count' : `${block.turns} turns`,
  ];
  byId('facts').textContent = facts.filter((fact) => fact !== '').join(' · ');
}

export function drawPicture(place: PlaceView, looks: Looks): void {
  const picture = byId('picture');
  if (place.state === null) {
    const why = 'What came before is not written down, so the cube here is not known.';
    picture.replaceChildren(element('p', { class: 'unknown-state' }, why));
    return;
  }
  const scene = cubeScene(place.state, {
    width: 360,
    letters: looks.letters,
    marked: place.marked,
    arrow: place.next ?? undefined,
  });
  picture.replaceChildren(drawScene(scene));
}

/** `after R', turn 21 of 60`. */
export function sayPlace(block: BlockView, place: PlaceView): string {
  const findings = place.findings.map((finding) => ` ${finding.message}`).join('');
  return placeWords(block, place.place) + findings;
}

function placeWords(block: BlockView, place: number): string {
  if (block.texts.length === 0) return 'no turns yet';
  if (place === 0) return 'before the first turn';
  const number = block.numbers[place - 1];
  const last = block.numbers.findLast((each) => each > 0) ?? 0;
  const counted = number === 0 ? '' : `, turn ${number} of ${last}`;
  return `after ${block.texts[place - 1]}${counted}`;
}

export function drawControls(block: BlockView, place: PlaceView): void {
  byId('where').textContent = placeWords(block, place.place);
  byId('next').textContent = block.texts[place.place] ?? '';
  for (const button of document.querySelectorAll('[data-step="back"], [data-step="start"]')) {
    button.toggleAttribute('disabled', place.place === 0);
  }
  for (const button of document.querySelectorAll('[data-step="forward"], [data-step="end"]')) {
    button.toggleAttribute('disabled', place.place === block.texts.length);
  }
}

/** Every goal with a sign and a word of its own, so that colour is not the only carrier. */
export function drawGoals(place: PlaceView): void {
  const items = place.goals.map(({ goal, holds }) => {
    const [kind, sign, word] =
      holds === null
        ? ['unknown', '?', 'not known']
        : holds
          ? ['holds', '✓', 'holds']
          : ['open', '○', 'does not hold'];
    const item = element('li', { class: kind, title: `${goal} ${word}` });
    item.append(element('span', { class: 'sign', 'aria-hidden': 'true' }, sign), goal);
    item.append(element('span', { class: 'unseen' }, ` ${word}`));
    return item;
  });
  byId('goals').replaceChildren(...items);
}

const SEVERITIES = { error: 'Error', warning: 'Warning', information: 'Note' } as const;

export function drawNotes(place: PlaceView, ask: (question: string) => void): void {
  const notes = byId('notes');
  notes.replaceChildren();
  if (place.comment !== '') notes.append(element('p', { class: 'comment' }, place.comment));
  for (const { severity, message } of place.findings) {
    const note = element('p', { class: `finding ${severity}` });
    note.append(element('strong', {}, `${SEVERITIES[severity]}: `), message);
    notes.append(note);
  }
  if (place.findings.length > 0 && place.marked !== 0) {
    const why = element('vscode-button', { appearance: 'secondary' }, 'Ask the tutor why');
    why.addEventListener('click', () => ask('Where did a goal break, and why?'));
    notes.append(why);
  }
}
