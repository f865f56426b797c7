import * as assert from 'node:assert/strict';
import * as vscode from 'vscode';
import { idOf, open, typeOver, until } from './editor-helpers.js';

interface Api {
  readonly ready: Promise<void>;
  statusText(): string | undefined;
}

const errorsOf = (uri: vscode.Uri) =>
  vscode.languages.getDiagnostics(uri).filter(({ severity }) => severity === vscode.DiagnosticSeverity.Error);

describe('the extension around the language', () => {
  let api: Api;

  before(async () => {
    const extension = vscode.extensions.getExtension<Api>('boothwright.boothwright-editor');
    assert.ok(extension, 'the extension is there');
    api = await extension.activate();
    await api.ready;
  });

  afterEach(() => vscode.commands.executeCommand('workbench.action.revertAndCloseActiveEditor'));

  it('has every command that its manifest names', async () => {
    const manifest = vscode.extensions.getExtension('boothwright.boothwright-editor')?.packageJSON;
    const there = await vscode.commands.getCommands(true);
    for (const { command } of manifest.contributes.commands) assert.ok(there.includes(command), command);
  });

  it('writes a first spec from answers, whose numbers come at once', async () => {
    const answers = { kind: 'wardrobe', room: '360 x 310 x 245 cm', noise: '52 dBA', space: '1.2 m x 0.6 m x 2 m' };
    const uri = await vscode.commands.executeCommand<vscode.Uri>('boothwright.newSpec', answers);
    const document = vscode.window.activeTextEditor?.document;
    assert.equal(document?.uri.toString(), uri.toString());
    assert.equal(document.languageId, 'booth');
    assert.match(document.getText(), /room 360 cm x 310 cm x 245 cm/);
    // A missed requirement shows that the text was read and worked out.
    await until(
      () => vscode.languages.getDiagnostics(uri),
      (found) => found.some((each) => idOf(each) === 'requirement-missed'),
    );
    assert.deepEqual(errorsOf(uri), []);
  });

  it('shows the booth at the cursor in the status bar, and marks numbers of an earlier text', async () => {
    const { editor } = await open('study.booth');
    await until(
      () => api.statusText() ?? '',
      (text) => /^\$\(mic\) .+: \d of \d met · .*kg/.test(text),
    );
    await typeOver(editor, 'thickness-of-air = 60 mm', 'thickness-of-air = 60 kg');
    await until(
      () => api.statusText() ?? '',
      (text) => text.includes('was '),
    );
    await vscode.commands.executeCommand('undo');
    await until(
      () => api.statusText() ?? '',
      (text) => text !== '' && !text.includes('was '),
    );
  });

  it('shows nothing in the status bar when it is switched off', async () => {
    const settings = vscode.workspace.getConfiguration('boothwright');
    await open('study.booth');
    await until(
      () => api.statusText(),
      (text) => text !== undefined,
    );
    await settings.update('statusBar', false, vscode.ConfigurationTarget.Workspace);
    await until(
      () => api.statusText(),
      (text) => text === undefined,
    );
    await settings.update('statusBar', undefined, vscode.ConfigurationTarget.Workspace);
  });

  it('opens a copy of an example and writes over none', async () => {
    const folder = vscode.workspace.workspaceFolders?.[0]?.uri;
    assert.ok(folder);
    const into = vscode.Uri.joinPath(folder, 'copies');
    const copied = [];
    for (let times = 0; times < 2; times++) {
      const uri = await vscode.commands.executeCommand<vscode.Uri>('boothwright.openExample', 'thin-gap-wall', into);
      copied.push(uri.path.slice(into.path.length));
    }
    assert.deepEqual(copied, ['/thin-gap-wall/thin-gap-wall.booth', '/thin-gap-wall-2/thin-gap-wall.booth']);
    await vscode.workspace.fs.delete(into, { recursive: true });
  });

  it('leads from each problem to a page that is packed, and shows it', async () => {
    const { document, editor } = await open('study.booth');
    await typeOver(editor, 'thickness-of-air = 60 mm', 'thickness-of-air = 60 kg');
    const [error] = await until(
      () => errorsOf(document.uri),
      (found) => found.length > 0,
    );
    const found = vscode.languages.getDiagnostics(document.uri);
    for (const { code } of found) {
      assert.ok(typeof code === 'object', JSON.stringify(code));
      const page = await vscode.workspace.openTextDocument(code.target);
      assert.match(page.getText(), /^# /, code.target.toString());
      if (code.target.path.startsWith('/problems/')) assert.ok(page.getText().startsWith(`# ${code.value}`));
    }
    assert.ok(error);
    editor.selection = new vscode.Selection(error.range.start, error.range.start);
    await vscode.commands.executeCommand('boothwright.explainProblem');
    const shown = await until(
      () => vscode.window.tabGroups.activeTabGroup.activeTab?.input,
      (input) => input instanceof vscode.TabInputCustom,
    );
    assert.ok(shown instanceof vscode.TabInputCustom);
    assert.equal(shown.viewType, 'vscode.markdown.preview.editor');
    assert.equal(shown.uri.scheme, 'booth-docs');
    await vscode.commands.executeCommand('workbench.action.closeActiveEditor');
    const shownAgain = await vscode.window.showTextDocument(document);
    await typeOver(shownAgain, 'thickness-of-air = 60 kg', 'thickness-of-air = 60 mm');
    await document.save();
  });

  it('offers a task for each spec, and takes one from `tasks.json`', async () => {
    const tasks = await vscode.tasks.fetchTasks({ type: 'boothwright' });
    const task = tasks.find(({ name }) => name === 'check study.booth');
    assert.ok(task, tasks.map(({ name }) => name).join());
    assert.deepEqual(task.problemMatchers, ['$boothwright']);
    const run = task.execution as vscode.ProcessExecution;
    assert.match(run.args.join(' '), /boothwright\.mjs check -- study\.booth$/);
  });
});
