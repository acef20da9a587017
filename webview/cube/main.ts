/**
 * The cube view: the picture of the state at the cursor, the goals there, and the goal strip.
 *
 * It works out no state: the extension sends the block once per version of the text and the state
 * with every place, so that what is shown belongs to one version as a whole.
 */
import * as v from 'valibot';
import { connectHost, type Host } from '../host.ts';
import { fromCube, toCube, type FromCube, type Looks, type ToCube } from '../messages.ts';
import { registerComponents } from '../toolkit.ts';
import { drawControls, drawGoals, drawHead, drawNotes, drawPicture, sayPlace } from './draw.ts';
import { drawStrip, scrollToPlace } from './strip.ts';
import { byId } from '../dom.ts';
import '../common.css';
import './cube.css';

/** Kept so that a view which comes back shows at once what it showed, marked as being updated. */
const keptSchema = v.object({ last: v.optional(toCube), looks: v.optional(toCube) });

type Shown = Extract<ToCube, { kind: 'block' }>;

/** Above this many turns the block is not kept: fetching it anew is quicker than storing it. */
const MOST_KEPT = 5000;

let shown: Shown | undefined;
let looks: Looks = { palette: 'standard', letters: false };

registerComponents();
const host: Host<FromCube, v.InferOutput<typeof keptSchema>> = connectHost(
  toCube,
  keptSchema,
  receive,
);

function receive(message: ToCube): void {
  switch (message.kind) {
    case 'block':
      shown = message;
      keep();
      drawAll();
      return;
    case 'place':
      // Of an earlier or later text than the block: the block that belongs to it is on its way.
      if (message.uri !== shown?.uri || message.version !== shown.version) return;
      shown = { ...shown, place: message.place };
      keep();
      drawAtPlace(shown);
      return;
    case 'updating':
      document.body.classList.toggle('updating', shown !== undefined);
      return;
    case 'nothing':
      shown = undefined;
      document.body.classList.remove('updating');
      document.body.classList.add('empty');
      document.body.dataset.uri = message.uri;
      byId('reason').textContent = message.reason;
      byId('live').textContent = message.reason;
      return;
    case 'looks':
      looks = message.looks;
      keep();
      document.body.dataset.palette = looks.palette;
      byId('letters').setAttribute('aria-pressed', String(looks.letters));
      byId('safe').setAttribute('aria-pressed', String(looks.palette === 'safe'));
      if (shown !== undefined) drawAll();
      return;
  }
}

function keep(): void {
  const last = shown !== undefined && shown.block.texts.length <= MOST_KEPT ? shown : undefined;
  host.keep({ ...(last === undefined ? {} : { last }), looks: { kind: 'looks', looks } });
}

function drawAll(): void {
  if (shown === undefined) return;
  document.body.classList.remove('updating', 'empty');
  drawHead(shown.block);
  drawAtPlace(shown);
}

function drawAtPlace({ block, place, uri, version }: Shown): void {
  document.body.dataset.uri = uri;
  document.body.dataset.version = String(version);
  document.body.dataset.place = String(place.place);
  drawPicture(place, looks);
  drawControls(block, place);
  drawGoals(place);
  drawNotes(place, (question) => host.send({ kind: 'ask', question }));
  drawStrip(block, place, (target) => host.send({ kind: 'go', uri, version, place: target }));
  scrollToPlace();
  byId('live').textContent = sayPlace(block, place);
}

const STEPS: Readonly<Record<string, Extract<FromCube, { kind: 'step' }>['by']>> = {
  ArrowLeft: 'back',
  ArrowRight: 'forward',
  Home: 'start',
  End: 'end',
};

document.addEventListener('keydown', (event) => {
  const by = STEPS[event.key];
  const typing = (event.target as HTMLElement).closest('input, textarea');
  if (by === undefined || typing !== null || event.altKey || event.ctrlKey || event.metaKey) return;
  event.preventDefault();
  host.send({ kind: 'step', by });
});

for (const button of document.querySelectorAll<HTMLElement>('[data-step]')) {
  button.addEventListener('click', () => {
    const by = v.safeParse(fromCube, { kind: 'step', by: button.dataset.step });
    if (by.success) host.send(by.output);
  });
}

byId('letters').addEventListener('click', () => {
  host.send({ kind: 'looks', looks: { ...looks, letters: !looks.letters } });
});
byId('safe').addEventListener('click', () => {
  const palette = looks.palette === 'safe' ? 'standard' : 'safe';
  host.send({ kind: 'looks', looks: { ...looks, palette } });
});

let width = document.body.clientWidth;
new ResizeObserver(() => {
  // The strip breaks its systems to the width; the height is its own doing.
  if (document.body.clientWidth === width) return;
  width = document.body.clientWidth;
  if (shown !== undefined) drawAtPlace(shown);
}).observe(document.body);

const kept = host.kept();
if (kept?.looks !== undefined) receive(kept.looks);
if (kept?.last !== undefined) {
  receive(kept.last);
  document.body.classList.add('updating');
}
host.send({ kind: 'ready' });
document.body.dataset.loaded = 'true';
