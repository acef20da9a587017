/** `ask FILE "QUESTION" …`: one dialogue with the tutor about a place of a text. */
import { ask as askTutor, NO_MEMORY, type Memory } from '../../engine/tutor/tutor.ts';
import { refused, type Arguments, type Command, type Outcome } from './command.ts';
import type { AskJson } from './json.ts';
import { readPlace } from './place.ts';
import { askText } from './render/ask.ts';

export const ask: Command = {
  name: 'ask',
  usage: ['ask FILE [--at LINE:CHAR] "QUESTION" ["NEXT QUESTION" …] [--json]'],
  summary:
    'Answers questions about the cube there; each question follows on the ones before it. Without --at: the end of the first solve.',
  options: { at: { type: 'string' } },
  run: (args) => Promise.resolve(run(args)),
};

function run(args: Arguments): Outcome {
  const [file, ...questions] = args.words;
  if (file === undefined) return refused('A file is missing ("-" is standard input).');
  if (questions.length === 0) return refused('A question is missing.');
  const place = readPlace(file, args);
  if (place.kind === 'refused') return place;
  const answers: AskJson['answers'] = [];
  let memory: Memory = NO_MEMORY;
  for (const question of questions) {
    const reply = askTutor(place.analysis, place.position, question, memory);
    memory = reply.memory;
    const { intent, text, facts, turns, followUps } = reply.answer;
    answers.push({
      question,
      intent,
      text,
      facts: facts.map((fact) => ({ ...fact })),
      ...(turns === undefined ? {} : { turns }),
      followUps: [...followUps],
    });
  }
  const json: AskJson = { answers };
  return { kind: 'done', json, text: (page) => askText(json, page), status: 0 };
}
