/**
 * The conversation with the tutor: kept per workspace, so that it is there again after the view was
 * hidden or the window reloaded. Questions go to the worker one after the other, because each
 * answer's memory is the next one's.
 */
import * as vscode from 'vscode';
import * as v from 'valibot';
import type { AskReply } from '../worker/messages.ts';
import type { Entry } from '../../webview/messages.ts';
import type { Analyses } from './analyses.ts';
import { placeWords, plainState } from './block-view.ts';
import type { Focus, Focused } from './focus.ts';
import type { WorkerClient } from './worker.ts';

/** Entries kept; older ones have scrolled out of mind. */
const KEPT = 40;
const STORED = 'turnlore.conversation';

/** Where an answer's turns belong. */
export interface AskedAt {
  readonly uri: string;
  readonly version: number;
  readonly line: number;
  readonly character: number;
}

const stored = v.object({ entries: v.array(v.unknown()), memory: v.unknown() });

export class Conversation implements vscode.Disposable {
  private entries: Entry[] = [];
  private memory: unknown;
  private readonly asked = new Map<number, AskedAt>();
  private last = 0;
  private queue = Promise.resolve();
  private round = 0;
  private readonly changed = new vscode.EventEmitter<Entry | undefined>();

  /** An entry that is new or has got its answer; undefined: all is to be shown anew. */
  readonly onDidChange = this.changed.event;

  private readonly store: vscode.Memento;
  private readonly analyses: Analyses;
  private readonly focus: Focus;
  private readonly worker: WorkerClient;

  constructor(
    store: vscode.Memento,
    analyses: Analyses,
    focus: Focus,
    worker: WorkerClient,
    readEntries: (data: unknown) => Entry[],
  ) {
    this.store = store;
    this.analyses = analyses;
    this.focus = focus;
    this.worker = worker;
    const kept = v.safeParse(stored, store.get(STORED));
    if (!kept.success) return;
    this.entries = readEntries(kept.output.entries).filter((entry) => entry.answer !== undefined);
    this.memory = kept.output.memory;
    this.last = this.entries.at(-1)?.id ?? 0;
  }

  all(): readonly Entry[] {
    return this.entries;
  }

  entry(id: number): Entry | undefined {
    return this.entries.find((entry) => entry.id === id);
  }

  /** The latest answer that has turns. */
  latestWithTurns(): Entry | undefined {
    return this.entries.findLast((entry) => entry.answer?.turns !== undefined);
  }

  /** Where the question of this entry was asked, if it was in this session. */
  askedAt(id: number): AskedAt | undefined {
    return this.asked.get(id);
  }

  clear(): void {
    this.round++;
    this.entries = [];
    this.memory = undefined;
    this.asked.clear();
    this.save();
    this.changed.fire(undefined);
  }

  /** Resolves once the answer is there. */
  ask(question: string): Promise<void> {
    const now = this.focus.current;
    const id = ++this.last;
    const where = now?.block === undefined ? '' : placeWords(now.block, now.place);
    this.put({ id, question, where });
    if (now === undefined) {
      const text = 'Open a .moves file and put the cursor where the question is about.';
      this.put({ id, question, where, answer: { text, followUps: [], places: [], failed: true } });
      return Promise.resolve();
    }
    this.asked.set(id, {
      uri: now.document.uri.toString(),
      version: now.document.version,
      line: now.position.line,
      character: now.position.character,
    });
    const { round } = this;
    const entry = { id, question, where };
    // The text as it is now, whatever becomes of it while the question waits.
    const request = {
      kind: 'ask',
      text: now.document.getText(),
      options: this.analyses.options(now.document),
      position: { line: now.position.line, character: now.position.character },
      question,
    } as const;
    this.queue = this.queue.then(async () => {
      if (round !== this.round) return;
      try {
        const reply = await this.worker.request({ ...request, memory: this.memory });
        if (round !== this.round) return;
        this.memory = reply.memory;
        this.put({ ...entry, answer: makeAnswer(reply, now) });
      } catch {
        const text =
          'Something went wrong while working out the answer. The log "Turnlore" says what.';
        this.put({ ...entry, answer: { text, followUps: [question], places: [], failed: true } });
      }
    });
    return this.queue;
  }

  private put(entry: Entry): void {
    const at = this.entries.findIndex(({ id }) => id === entry.id);
    if (at >= 0) this.entries[at] = entry;
    else this.entries.push(entry);
    this.entries = this.entries.slice(-KEPT);
    this.save();
    this.changed.fire(entry);
  }

  private save(): void {
    void this.store.update(STORED, { entries: this.entries, memory: this.memory });
  }

  dispose(): void {
    this.changed.dispose();
  }
}

function makeAnswer(reply: AskReply, asked: Focused): NonNullable<Entry['answer']> {
  const { block, document } = asked;
  const about = { uri: document.uri.toString(), version: document.version };
  const state = block?.course.stateAt(asked.place);
  return {
    text: reply.text,
    ...(reply.turns === undefined ? {} : { turns: reply.turns }),
    followUps: [...reply.followUps],
    places: reply.places.map(({ turn, label }) => ({ ...about, turn, label })),
    ...(block === undefined || state === undefined || reply.marked === 0
      ? {}
      : {
          picture: {
            state: plainState(state),
            marked: reply.marked,
            caption: `The cube ${placeWords(block, asked.place)}`,
          },
        }),
    failed: false,
  };
}
