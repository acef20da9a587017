/** The palette entries: one table, so that every button of a view has its command. */
import * as vscode from 'vscode';
import type { Conversation } from './conversation.ts';
import { CUBE_VIEW, type CubeView } from './cube-view.ts';
import type { Focus } from './focus.ts';
import { readLooks, writeLooks } from './settings.ts';
import type { TutorView } from './tutor-view.ts';

interface Parts {
  readonly focus: Focus;
  readonly cube: CubeView;
  readonly tutor: TutorView;
  readonly conversation: Conversation;
}

type Command = (parts: Parts) => unknown;

const COMMANDS: Readonly<Record<string, Command>> = {
  showCube: () => vscode.commands.executeCommand(`${CUBE_VIEW}.focus`),
  showTutor: ({ tutor }) => tutor.show(),
  openCubeBeside: ({ cube }) => cube.openBeside(),
  stepForward: ({ focus }) => focus.step('forward'),
  stepBack: ({ focus }) => focus.step('back'),
  toStart: ({ focus }) => focus.step('start'),
  toEnd: ({ focus }) => focus.step('end'),
  nextBreak: ({ focus }) => goToNextBreak(focus),
  ask: ({ tutor }) => askInBox(tutor),
  whatNext: ({ tutor }) => tutor.ask('What next?'),
  hint: ({ tutor }) => tutor.ask('Give me a hint'),
  moreHelp: ({ tutor }) => tutor.ask('More help'),
  showTurns: ({ tutor }) => tutor.ask('Just show me'),
  whyBreak: ({ tutor }) => tutor.ask('Where did a goal break, and why?'),
  insertAnswer: ({ tutor }) => tutor.insert(),
  clearConversation: ({ conversation }) => conversation.clear(),
  toggleLetters: () => {
    const looks = readLooks();
    return writeLooks({ ...looks, letters: !looks.letters });
  },
  togglePalette: () => {
    const looks = readLooks();
    return writeLooks({ ...looks, palette: looks.palette === 'safe' ? 'standard' : 'safe' });
  },
};

export function registerCommands(parts: Parts): vscode.Disposable {
  return vscode.Disposable.from(
    ...Object.entries(COMMANDS).map(([name, run]) =>
      vscode.commands.registerCommand(`turnlore.${name}`, () => run(parts)),
    ),
  );
}

async function askInBox(tutor: TutorView): Promise<void> {
  const question = await vscode.window.showInputBox({
    title: 'Ask the tutor',
    prompt: 'About the cube at the cursor',
    placeHolder: 'Where is the white-red edge?',
  });
  if (question !== undefined && question.trim() !== '') await tutor.ask(question);
}

/** To the next turn that breaks a goal, from the start again after the last one. */
async function goToNextBreak(focus: Focus): Promise<void> {
  const now = focus.current;
  const breaks = now?.block?.timeline.breaks.filter((found) => !found.part) ?? [];
  if (now === undefined || breaks.length === 0) {
    void vscode.window.showInformationMessage('No goal is broken in this solve.');
    return;
  }
  const next = breaks.find((found) => found.turn + 1 > now.place) ?? breaks[0];
  await focus.goTo(next.turn + 1);
}
