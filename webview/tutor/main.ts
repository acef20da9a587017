/**
 * The tutor view: what was asked and answered about the text, and the field to ask in.
 *
 * The extension keeps the conversation; the view keeps the question that is still being written.
 */
import * as v from 'valibot';
import { byId } from '../dom.ts';
import { connectHost } from '../host.ts';
import { toTutor, type Entry, type FromTutor, type Looks, type ToTutor } from '../messages.ts';
import { registerComponents } from '../toolkit.ts';
import { drawEntry } from './entry.ts';
import '../common.css';
import './tutor.css';

const keptSchema = v.object({ draft: v.string() });

let looks: Looks = { palette: 'standard', letters: false };
const entries = new Map<number, Entry>();

registerComponents();
const host = connectHost<typeof toTutor, typeof keptSchema, FromTutor>(
  toTutor,
  keptSchema,
  receive,
);

const transcript = byId('transcript');
const field = byId('question') as HTMLElement & { value: string };

function receive(message: ToTutor): void {
  switch (message.kind) {
    case 'transcript':
      entries.clear();
      transcript.replaceChildren();
      for (const entry of message.entries) show(entry);
      document.body.classList.toggle('silent', entries.size === 0);
      return;
    case 'entry':
      show(message.entry);
      document.body.classList.remove('silent');
      return;
    case 'where':
      byId('where').textContent = message.where;
      document.body.classList.toggle('mute', !message.canAsk);
      return;
    case 'looks':
      looks = message.looks;
      document.body.dataset.palette = looks.palette;
      for (const entry of entries.values()) show(entry);
      return;
    case 'focus':
      field.focus();
      return;
  }
}

/** Draws an entry in its place, or at the end if it is new. */
function show(entry: Entry): void {
  entries.set(entry.id, entry);
  const drawn = drawEntry(entry, looks, (message) => host.send(message));
  const old = transcript.querySelector(`[data-id="${entry.id}"]`);
  if (old === null) transcript.append(drawn);
  else old.replaceWith(drawn);
  if (transcript.lastElementChild === drawn) drawn.scrollIntoView({ block: 'nearest' });
}

function ask(question: string): void {
  const words = question.trim();
  if (words === '') return;
  host.send({ kind: 'ask', question: words.slice(0, 4000) });
}

function askWritten(): void {
  ask(field.value);
  field.value = '';
  host.keep({ draft: '' });
}

field.addEventListener('input', () => host.keep({ draft: field.value }));
field.addEventListener('keydown', (event) => {
  if (event.key !== 'Enter' || event.shiftKey || event.isComposing) return;
  event.preventDefault();
  askWritten();
});
byId('ask').addEventListener('click', askWritten);
byId('clear').addEventListener('click', () => host.send({ kind: 'clear' }));
for (const button of document.querySelectorAll<HTMLElement>('[data-question]')) {
  button.addEventListener('click', () => ask(button.dataset.question ?? ''));
}

// The component writes a label of its own over the page's.
field.setAttribute('aria-label', 'Question');
field.value = host.kept()?.draft ?? '';
host.send({ kind: 'ready' });
document.body.dataset.loaded = 'true';
