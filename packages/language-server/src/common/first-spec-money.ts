import type { Answers, Question } from '@boothwright/language';

const money = 'budget';
const bareAmount = /^\s*\d+(\.\d+)?\s*$/;

/** The questions of a first spec with the currency that the settings name in the example of the budget. */
export function questionsIn(questions: readonly Question[], currency: string): readonly Question[] {
  if (currency === '') return questions;
  return questions.map((question) =>
    question.name === money ? { ...question, example: question.example.replace(/[A-Z]{3}$/, currency) } : question,
  );
}

/** An amount without a currency is meant in that of the settings; what names one stays as it is. */
export function answerIn(name: string, answer: string, currency: string): string {
  return name === money && currency !== '' && bareAmount.test(answer) ? `${answer.trim()} ${currency}` : answer;
}

export function answersIn(answers: Answers, currency: string): Answers {
  return Object.fromEntries(
    Object.entries(answers).map(([name, answer]) => [
      name,
      typeof answer === 'string' ? answerIn(name, answer, currency) : answer,
    ]),
  ) as Answers;
}
