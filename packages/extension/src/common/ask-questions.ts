import * as vscode from 'vscode';
import type { AnswerCheck, Answers, Question } from './protocol.js';

type Check = (name: string, answer: string) => Promise<AnswerCheck>;
/** `finish` leaves what is still to be asked unanswered; `stop` writes nothing. */
type Reply = { readonly answer: string | undefined } | 'back' | 'finish' | 'stop';

const finish: vscode.QuickInputButton = {
  iconPath: new vscode.ThemeIcon('check-all'),
  tooltip: 'Write the spec now; what was not asked stays unstated',
};
const ownWords = 'Something else …';
const unknown = 'Not known';

/** Asks one question after the other; each may be skipped, gone back from, or be the last. */
export async function askQuestions(questions: readonly Question[], check: Check): Promise<Answers | undefined> {
  const answers: Answers = {};
  const asked: Question[] = [];
  for (let at = 0; at < questions.length; ) {
    const question = questions[at];
    if (question === undefined) break;
    if (question.when !== undefined && !question.when.is.includes(answers[question.when.name] ?? '')) {
      at += 1;
      continue;
    }
    const step = { number: at + 1, of: questions.length, canGoBack: asked.length > 0, before: answers[question.name] };
    const reply =
      question.choices === undefined ? await askText(question, step, check) : await choose(question, step, check);
    if (reply === 'stop') return undefined;
    if (reply === 'finish') return answers;
    if (reply === 'back') {
      const last = asked.pop();
      at = last === undefined ? at : questions.indexOf(last);
      continue;
    }
    if (reply.answer === undefined) delete answers[question.name];
    else answers[question.name] = reply.answer;
    asked.push(question);
    at += 1;
  }
  return answers;
}

interface Step {
  readonly number: number;
  readonly of: number;
  readonly canGoBack: boolean;
  readonly before: string | undefined;
}

function dress(
  input: vscode.QuickInput & { buttons: readonly vscode.QuickInputButton[] },
  { asks }: Question,
  step: Step,
): void {
  // In the title the question stays in sight, whatever is said below about an answer.
  input.title = asks;
  input.step = step.number;
  input.totalSteps = step.of;
  input.ignoreFocusOut = true;
  input.buttons = [...(step.canGoBack ? [vscode.QuickInputButtons.Back] : []), finish];
}

async function choose(question: Question, step: Step, check: Check): Promise<Reply> {
  const reply = await new Promise<Reply>((resolve) => {
    const pick = vscode.window.createQuickPick();
    dress(pick, question, step);
    pick.placeholder = `Choose, such as ${question.example}`;
    pick.items = [
      ...(question.choices ?? []).map(({ value, says }) => ({ label: value, description: says })),
      ...(question.free === true ? [{ label: ownWords, description: `such as ${question.example}` }] : []),
      { label: unknown, description: 'the spec says what stands in' },
    ];
    pick.activeItems = pick.items.filter(({ label }) => label === step.before);
    pick.onDidTriggerButton((button) => end(button === finish ? 'finish' : 'back'));
    pick.onDidAccept(() => {
      const label = pick.activeItems[0]?.label;
      if (label !== undefined) end({ answer: label === unknown ? undefined : label });
    });
    pick.onDidHide(() => end('stop'));
    // The first end counts: what is put away hides too.
    const end = (answer: Reply): void => {
      resolve(answer);
      pick.dispose();
    };
    pick.show();
  });
  const isOwn = typeof reply === 'object' && reply.answer === ownWords;
  return isOwn ? askText(question, step, check) : reply;
}

function askText(question: Question, step: Step, check: Check): Promise<Reply> {
  return new Promise<Reply>((resolve) => {
    const box = vscode.window.createInputBox();
    dress(box, question, step);
    box.prompt = 'Leave it empty if you do not know.';
    box.placeholder = `such as ${question.example}`;
    box.value = step.before ?? '';
    const end = (answer: Reply): void => {
      resolve(answer);
      box.dispose();
    };
    const judge = async (): Promise<AnswerCheck> => {
      const { value } = box;
      const checked = await check(question.name, value);
      // What was typed on in the meantime is judged by itself.
      if (box.value === value) box.validationMessage = checked.kind === 'bad' ? checked.message : undefined;
      return checked;
    };
    box.onDidChangeValue(() => {
      // While somebody types, only a complaint that is already there is kept up to date.
      if (box.validationMessage !== undefined) void judge();
    });
    box.onDidAccept(async () => {
      const checked = await judge();
      if (checked.kind === 'good') end({ answer: checked.answer });
      if (checked.kind === 'empty') end({ answer: undefined });
    });
    box.onDidTriggerButton((button) => end(button === finish ? 'finish' : 'back'));
    box.onDidHide(() => end('stop'));
    box.show();
  });
}
