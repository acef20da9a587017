/** The goals at the cursor in the status bar. */
import * as vscode from 'vscode';
import { goalsAt, placeWords } from './block-view.ts';
import type { Focus, Focused } from './focus.ts';

export class Status implements vscode.Disposable {
  private readonly item = vscode.window.createStatusBarItem(
    'goals',
    vscode.StatusBarAlignment.Left,
    50,
  );
  private readonly parts: vscode.Disposable;

  constructor(focus: Focus) {
    this.item.name = 'Turnlore: goals at the cursor';
    this.item.command = 'turnlore.showCube';
    this.parts = vscode.Disposable.from(
      this.item,
      focus.onDidChange((focused) => this.show(focused)),
    );
  }

  private show(focused: Focused | undefined): void {
    const block = focused?.block;
    if (focused === undefined || block === undefined) {
      this.item.hide();
      return;
    }
    const goals = goalsAt(block, focused.place);
    const known = goals.every(({ holds }) => holds !== null);
    const missing = goals.filter(({ holds }) => holds === false).map(({ goal }) => goal);
    const held = goals.filter(({ holds }) => holds === true).map(({ goal }) => goal);
    const where = placeWords(block, focused.place);
    const last = held.at(-1);
    const sum = !known
      ? 'goals not known here'
      : missing.length === 0
        ? 'all goals hold'
        : `${last === undefined ? '' : `✓ ${last}, `}${missing[0]} next`;
    this.item.text = `${where}: ${sum}`;
    const list = goals.map(
      ({ goal, holds }) => `${holds === null ? '?' : holds ? '✓' : '○'} ${goal}`,
    );
    this.item.tooltip = new vscode.MarkdownString(list.join('  \n'));
    this.item.accessibilityInformation = {
      label: `${where}. Holds: ${held.join(', ') || 'nothing'}. Does not hold: ${missing.join(', ') || 'nothing'}.`,
    };
    this.item.show();
  }

  dispose(): void {
    this.parts.dispose();
  }
}
