/** One question and its answer, with what can be done from there. */
import { cubeScene } from '../../engine/picture/cube-scene.ts';
import { drawScene, element } from '../dom.ts';
import type { Entry, FromTutor, Looks } from '../messages.ts';

type Answer = NonNullable<Entry['answer']>;
type Send = (message: FromTutor) => void;

export function drawEntry(entry: Entry, looks: Looks, send: Send): HTMLElement {
  const item = element('article', { class: 'entry', 'data-id': String(entry.id) });
  const asked = element('header', {}, element('p', { class: 'asked' }, entry.question));
  if (entry.where !== '') asked.append(element('p', { class: 'asked-where' }, entry.where));
  item.append(
    asked,
    entry.answer === undefined ? drawWaiting() : drawAnswer(entry, entry.answer, looks, send),
  );
  return item;
}

function drawWaiting(): HTMLElement {
  const waiting = element('p', { class: 'waiting' });
  waiting.append(
    element('vscode-progress-ring', { 'aria-hidden': 'true' }),
    'Looking at the cube …',
  );
  return waiting;
}

function drawAnswer(entry: Entry, answer: Answer, looks: Looks, send: Send): HTMLElement {
  const drawn = element('div', { class: answer.failed ? 'answer failed' : 'answer' });
  const words = element('div', { class: 'words' });
  for (const paragraph of answer.text.split('\n')) {
    if (paragraph.trim() !== '') words.append(element('p', {}, paragraph));
  }
  drawn.append(words);
  if (answer.picture !== undefined) drawn.append(drawPicture(answer.picture, looks));
  if (answer.turns !== undefined) drawn.append(element('p', { class: 'turns' }, answer.turns));
  const actions = element('div', { class: 'actions' });
  const button = (label: string, appearance: string, message: FromTutor): void => {
    const made = element('vscode-button', { appearance }, label);
    made.addEventListener('click', () => send(message));
    actions.append(made);
  };
  if (answer.turns !== undefined) button('Insert', 'primary', { kind: 'insert', id: entry.id });
  for (const { label, turn, uri, version } of answer.places) {
    button(label, 'secondary', { kind: 'goTo', uri, version, turn });
  }
  if (actions.childElementCount > 0) drawn.append(actions);
  if (answer.followUps.length > 0) drawn.append(drawFollowUps(answer.followUps, send));
  return drawn;
}

function drawPicture(picture: NonNullable<Answer['picture']>, looks: Looks): HTMLElement {
  const figure = element('figure', { class: 'cube-picture' });
  const scene = cubeScene(picture.state, {
    width: 176,
    letters: looks.letters,
    marked: picture.marked,
    bends: 2,
  });
  figure.append(drawScene(scene), element('figcaption', {}, picture.caption));
  return figure;
}

function drawFollowUps(questions: readonly string[], send: Send): HTMLElement {
  const list = element('ul', { class: 'follow-ups', 'aria-label': 'You could ask' });
  for (const question of questions) {
    const made = element('button', { type: 'button' }, question);
    made.addEventListener('click', () => send({ kind: 'ask', question }));
    list.append(element('li', {}, made));
  }
  return list;
}
