/** The worker as the editor side sees it: requests with a reply each, started when first needed. */
import * as vscode from 'vscode';
import type {
  AskReply,
  AskRequest,
  SearchProgress,
  SearchReply,
  SearchRequest,
  WorkerReply,
  WorkerRequest,
  WorkerResult,
} from '../worker/messages.ts';
import type { WorkerLine } from '../worker/line.ts';
import { startWorker } from '../worker/start.ts';

interface Waiting {
  readonly resolve: (reply: WorkerReply) => void;
  readonly reject: (error: Error) => void;
  readonly onProgress: ((progress: SearchProgress) => void) | undefined;
}

export class WorkerClient implements vscode.Disposable {
  private line: Promise<WorkerLine> | undefined;
  private readonly waiting = new Map<number, Waiting>();
  private last = 0;

  private readonly extension: vscode.Uri;
  private readonly log: vscode.LogOutputChannel;

  constructor(extension: vscode.Uri, log: vscode.LogOutputChannel) {
    this.extension = extension;
    this.log = log;
  }

  /** Rejects if the worker cannot be started, ends, or fails on this request. */
  async request(body: AskRequest): Promise<AskReply> {
    const reply = await this.send(body);
    if (reply.kind !== 'answer') throw new Error(`${reply.kind} is no answer`);
    return reply;
  }

  /** Rejects with a `CancellationError` once the worker has called the search off. */
  async search(
    body: SearchRequest,
    token: vscode.CancellationToken,
    onProgress?: (progress: SearchProgress) => void,
  ): Promise<SearchReply> {
    const reply = await this.send(body, token, onProgress);
    if (reply.kind === 'answer') throw new Error('an answer to a search');
    return reply;
  }

  private async send(
    body: WorkerRequest,
    token?: vscode.CancellationToken,
    onProgress?: (progress: SearchProgress) => void,
  ): Promise<WorkerReply> {
    const line = await (this.line ??= this.start());
    if (token?.isCancellationRequested === true) throw new vscode.CancellationError();
    const id = ++this.last;
    const cancelling = token?.onCancellationRequested(() => {
      const sent = performance.now();
      line.post({ cancel: id });
      void reply.catch(() => {
        const took = performance.now() - sent;
        this.log.debug(`search ${id} called off within ${took.toFixed(1)} ms`);
      });
    });
    const reply = new Promise<WorkerReply>((resolve, reject) => {
      this.waiting.set(id, { resolve, reject, onProgress });
      line.post({ id, body });
    });
    return reply.finally(() => {
      cancelling?.dispose();
    });
  }

  private start(): Promise<WorkerLine> {
    const dist = vscode.Uri.joinPath(this.extension, 'dist');
    const read = async (): Promise<Uint8Array> =>
      vscode.workspace.fs.readFile(vscode.Uri.joinPath(dist, 'worker-web.js'));
    const started = startWorker(
      { folder: dist.fsPath, read },
      { onResult: (result) => this.settle(result), onEnd: (reason) => this.end(reason) },
    );
    started.catch((error: unknown) => this.end(String(error)));
    return started;
  }

  private settle(result: WorkerResult): void {
    const waiting = this.waiting.get(result.id);
    if ('progress' in result) {
      waiting?.onProgress?.(result.progress);
      return;
    }
    this.waiting.delete(result.id);
    if ('failed' in result) {
      this.log.error(`worker: ${result.failed}`);
      waiting?.reject(new Error(result.failed));
    } else if ('cancelled' in result) waiting?.reject(new vscode.CancellationError());
    else waiting?.resolve(result.body);
  }

  /** Whoever waits is told; the next request starts the worker anew. */
  private end(reason: string): void {
    this.log.error(`The worker has ended: ${reason}`);
    this.line = undefined;
    for (const waiting of this.waiting.values()) waiting.reject(new Error(reason));
    this.waiting.clear();
  }

  dispose(): void {
    void this.line?.then((line) => line.stop()).catch(() => undefined);
  }
}
