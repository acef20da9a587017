/**
 * The terminal command: `turnlore COMMAND …`. Reads the words of the command line, hands them to the
 * command and writes what comes back. Exit status 0: no error-level finding; 1: some; 2: wrong use
 * or input that cannot be read, with one sentence on standard error.
 */
import { parseArgs } from 'node:util';
import { refused, type Arguments, type Command, type Outcome, type Refusal } from './command.ts';
import { COMMANDS } from './commands.ts';
import { depthFor, makePage } from './render/page.ts';
import { listed } from './render/words.ts';

const NARROW = 40;
const USUAL = 80;
const BROAD = 120;

process.stdout.on('error', (error: NodeJS.ErrnoException) => {
  // Whoever reads has had enough, as `head` has after some lines.
  if (error.code !== 'EPIPE') throw error;
});

try {
  process.exitCode = await main(process.argv.slice(2));
} catch (error) {
  // A fault of this program, not of what it was given; status 1 would be taken for a finding.
  process.stderr.write(
    `${error instanceof Error ? (error.stack ?? error.message) : String(error)}\n`,
  );
  process.exitCode = 2;
}

async function main(words: readonly string[]): Promise<number> {
  const [name, ...rest] = words;
  if (name === '--help' || name === '-h' || name === 'help') return write(await overview());
  const load = COMMANDS.get(name ?? '');
  if (load === undefined) {
    const known = listed([...COMMANDS.keys()]);
    return refuse(
      name === undefined
        ? `A command is missing; there are ${known} (--help tells more).`
        : `There is no command "${name}"; there are ${known}.`,
    );
  }
  const command = await load();
  const args = readArguments(command, rest);
  if ('sentence' in args) return refuse(args.sentence);
  if (args.has('help')) return write(helpOf(command));
  const outcome: Outcome = await command.run(args);
  if (outcome.kind === 'refused') return refuse(outcome.sentence);
  if (args.has('json')) write(`${JSON.stringify(outcome.json, null, 2)}\n`);
  else {
    const width = Math.max(NARROW, Math.min(process.stdout.columns || USUAL, BROAD));
    write(outcome.text(makePage(depthFor(process.env, process.stdout.isTTY), width)));
  }
  return outcome.status;
}

/** A minus in front of turns or positions is no option, but a lone `-` is standard input. */
function readArguments(command: Command, words: readonly string[]): Arguments | Refusal {
  const options = {
    ...command.options,
    json: { type: 'boolean' },
    help: { type: 'boolean', short: 'h' },
  } as const;
  try {
    const { values, positionals } = parseArgs({
      args: [...words],
      options,
      allowPositionals: true,
      strict: true,
    });
    const given: Readonly<Record<string, unknown>> = values;
    return {
      words: positionals,
      value: (name) => {
        const value = given[name];
        return typeof value === 'string' ? value : undefined;
      },
      has: (name) => given[name] === true,
    };
  } catch (error) {
    return refused(optionSentence(command, error));
  }
}

/** One sentence, whatever Node's own explanation is. */
function optionSentence(command: Command, error: unknown): string {
  const text = error instanceof Error ? error.message : '';
  const option = /'(?:-\w, )?(-{1,2}[\w-]+)/u.exec(text)?.[1] ?? 'an option';
  const known = ['json', 'help', ...Object.keys(command.options)].map((name) => `--${name}`);
  if (text.startsWith('Unknown option')) {
    return `"${command.name}" has no option ${option}; it has ${listed(known.sort())}.`;
  }
  return text.includes('does not take an argument')
    ? `The option ${option} takes no value.`
    : `The option ${option} needs a value.`;
}

async function overview(): Promise<string> {
  const commands = await Promise.all([...COMMANDS.values()].map((load) => load()));
  const usages = commands.flatMap((command) => [
    ...command.usage.map((usage) => `  turnlore ${usage}`),
    `      ${command.summary}`,
  ]);
  return `Turnlore checks what .moves files claim about a cube.\n\n${usages.join('\n')}\n
--json prints one JSON document instead of text; "-" as a file is standard input.
Exit status: 0 no error-level finding, 1 some, 2 wrong use or unreadable input.\n`;
}

function helpOf(command: Command): string {
  const usages = command.usage.map((usage) => `turnlore ${usage}`).join('\n');
  return `${usages}\n\n${command.summary}\n`;
}

function write(text: string): number {
  process.stdout.write(text);
  return 0;
}

function refuse(sentence: string): number {
  process.stderr.write(`${sentence}\n`);
  return 2;
}
