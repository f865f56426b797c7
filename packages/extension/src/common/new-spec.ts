import * as vscode from 'vscode';
import type { BaseLanguageClient } from 'vscode-languageclient';
import { askQuestions } from './ask-questions.js';
import type { Answers, FirstSpec, Question } from './protocol.js';

/**
 * Asks for what a tape measure knows and opens a complete spec that is written from it. With answers given, as from a
 * key binding, nothing is asked. Answers the address of the new document; undefined when the asking was broken off.
 */
export async function newSpec(client: BaseLanguageClient, given: unknown): Promise<vscode.Uri | undefined> {
  await client.start();
  const answers = isAnswers(given)
    ? given
    : await askQuestions(await client.sendRequest<readonly Question[]>('boothwright/questions'), (name, answer) =>
        client.sendRequest('boothwright/checkAnswer', { name, answer }),
      );
  if (answers === undefined) return undefined;
  const spec = await client.sendRequest<FirstSpec | null>('boothwright/firstSpec', { answers });
  if (spec === null) throw new Error('The spec could not be written; the output of Boothwright says why');
  const document = await vscode.workspace.openTextDocument({ language: 'booth', content: spec.text });
  await vscode.window.showTextDocument(document, { preview: false });
  if (spec.refused.length > 0) {
    const names = spec.refused.map(({ name }) => name).join(', ');
    void vscode.window.showWarningMessage(
      `Left out, with the reason in the text: ${names}. Everything else stands as you said it.`,
    );
  }
  return document.uri;
}

function isAnswers(value: unknown): value is Answers {
  if (typeof value !== 'object' || value === null || value instanceof vscode.Uri) return false;
  return Object.values(value).every((each) => typeof each === 'string');
}
