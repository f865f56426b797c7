import {
  type AnswerCheck,
  type Answers,
  checkAnswer,
  type FirstSpec,
  firstSpec,
  questions,
} from '@boothwright/language';
import { showing } from '@boothwright/presentation';
import type { Connection, Position } from 'vscode-languageserver';
import { answerIn, answersIn, questionsIn } from './first-spec-money.js';
import { guarded, guardedLater } from './guarded.js';
import { type Headline, headline } from './headline.js';
import type { SheetAsked } from './sheet/protocol.js';
import { createSheets, type SheetServices } from './sheet/service.js';

/**
 * What an editor may ask beyond the protocol: the headline of the booth at the cursor, the live sheet, and the questions
 * from which a first spec is written.
 */
export function answerClientRequests(
  connection: Connection,
  log: (message: string) => void,
  services: SheetServices,
): void {
  const { viewOf } = services;
  const sheets = createSheets(services);
  connection.onRequest(
    'boothwright/sheet',
    guardedLater('Sheet', log, null, (asked: SheetAsked) => sheets(asked)),
  );
  connection.onRequest(
    'boothwright/headline',
    guarded('Headline', log, null, ({ uri, position }: { uri: string; position: Position }): Headline | null => {
      const view = viewOf(uri);
      return (view && showing(services.shown(), () => headline(view, position))) ?? null;
    }),
  );
  const currency = (): string => services.shown().currency;
  connection.onRequest('boothwright/questions', () => questionsIn(questions, currency()));
  connection.onRequest(
    'boothwright/checkAnswer',
    guarded(
      'Check of an answer',
      log,
      { kind: 'empty' },
      ({ name, answer }: { name: string; answer: string }): AnswerCheck =>
        checkAnswer(name, answerIn(name, answer, currency())),
    ),
  );
  connection.onRequest(
    'boothwright/firstSpec',
    guarded('First spec', log, null, ({ answers }: { answers: Answers }): FirstSpec | null =>
      firstSpec(answersIn(answers, currency())),
    ),
  );
}
