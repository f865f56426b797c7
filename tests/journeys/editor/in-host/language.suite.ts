import * as assert from 'node:assert/strict';
import * as vscode from 'vscode';
import { idOf, open, placeAfter, typeOver, until } from './editor-helpers.js';

describe('a booth spec in the editor', () => {
  before(async () => {
    const extension = vscode.extensions.getExtension('boothwright.boothwright-editor');
    assert.ok(extension, 'the extension is there');
    const api = await extension.activate();
    await api.ready;
  });

  afterEach(() => vscode.commands.executeCommand('workbench.action.revertAndCloseActiveEditor'));

  it('is recognised by its file name', async () => {
    const { document } = await open('study.booth');
    assert.equal(document.languageId, 'booth');
    assert.equal(vscode.extensions.getExtension('boothwright.boothwright-editor')?.isActive, true);
  });

  it('has no errors as it stands', async () => {
    const { document } = await open('study.booth');
    // A missed requirement shows that the spec was read and assessed.
    const found = await until(
      () => vscode.languages.getDiagnostics(document.uri),
      (diagnostics) => diagnostics.some((each) => idOf(each) === 'requirement-missed'),
    );
    const errors = found.filter(({ severity }) => severity === vscode.DiagnosticSeverity.Error);
    assert.deepEqual(
      errors.map(({ message }) => message),
      [],
    );
  });

  it('reports a unit of the wrong dimension on that very token, while typing', async () => {
    const { document, editor } = await open('study.booth');
    await typeOver(editor, 'thickness-of-air = 60 mm', 'thickness-of-air = 60 kg');
    const found = await until(
      () => vscode.languages.getDiagnostics(document.uri),
      (diagnostics) => diagnostics.some(({ severity }) => severity === vscode.DiagnosticSeverity.Error),
    );
    const error = found.find(({ severity }) => severity === vscode.DiagnosticSeverity.Error);
    assert.match(error?.message ?? '', /length/);
    assert.equal(error?.source, 'boothwright');
    await vscode.commands.executeCommand('undo');
    await until(
      () => vscode.languages.getDiagnostics(document.uri),
      (diagnostics) => diagnostics.every(({ severity }) => severity !== vscode.DiagnosticSeverity.Error),
    );
  });

  it('reports a missed requirement as a warning', async () => {
    const { document } = await open('study.booth');
    const found = await until(
      () => vscode.languages.getDiagnostics(document.uri),
      (diagnostics) => diagnostics.some((each) => idOf(each) === 'requirement-missed'),
    );
    const missed = found.find((each) => idOf(each) === 'requirement-missed');
    assert.equal(missed?.severity, vscode.DiagnosticSeverity.Warning);
    assert.match(document.getText(missed?.range), /^require /);
  });

  it('shows the band table and a picture on an assembly', async () => {
    const { document } = await open('study.booth');
    const text = await until(
      () => hoverText(document, placeAfter(document, 'assembly side', -1)),
      (hover) => hover.includes('STC'),
    );
    assert.match(text, /STC \d+/);
    assert.match(text, /\| dB \|.*500/);
    assert.match(text, /data:image\/svg\+xml;base64,/);
  });

  it("shows a material's data on hover, with its origin", async () => {
    const { document } = await open('study.booth');
    const text = await until(
      () => hoverText(document, placeAfter(document, '\n  gypsum-boa')),
      (hover) => hover.includes('density'),
    );
    assert.match(text, /density/);
    assert.match(text, /catalogue/);
  });

  it('offers materials where a layer may stand, and not elsewhere', async () => {
    const { document, editor } = await open('study.booth');
    await typeOver(editor, '  gypsum-board 12.5 mm', '  gyp');
    const layers = await completionLabels(document, placeAfter(document, '\n  gyp'));
    assert.ok(layers.includes('gypsum-board'), layers.slice(0, 10).join(', '));
    const top = await completionLabels(document, new vscode.Position(0, 0));
    assert.ok(!top.includes('gypsum-board'), top.slice(0, 10).join(', '));
  });

  it('offers units of the dimension that is expected', async () => {
    const { document, editor } = await open('study.booth');
    await typeOver(editor, 'run 1.2 m', 'run 1.2 ');
    const offered = await completionLabels(document, placeAfter(document, 'run 1.2 '));
    assert.ok(offered.includes('m') && offered.includes('mm'), offered.join(', '));
    assert.ok(!offered.includes('kg'), offered.join(', '));
  });

  it('writes at the end of the lines what they come to', async () => {
    const { document } = await open('study.booth');
    const whole = new vscode.Range(0, 0, document.lineCount, 0);
    const hints = await until(
      () => vscode.commands.executeCommand<vscode.InlayHint[]>('vscode.executeInlayHintProvider', document.uri, whole),
      // Numbers of an earlier text, which may show first, begin with "was".
      (found) => found.some(({ label }) => /"\s*STC/.test(JSON.stringify(label))),
    );
    const lines = hints.map(({ label, position }) => {
      const text = typeof label === 'string' ? label : label.map(({ value }) => value).join('');
      return `${document.lineAt(position.line).text} -> ${text}`;
    });
    assert.ok(
      lines.some((line) => /^assembly side.* -> STC \d+/.test(line)),
      lines.join('\n'),
    );
    assert.ok(
      lines.some((line) => /^require .* -> (met|missed)/.test(line)),
      lines.join('\n'),
    );
    assert.ok(
      lines.some((line) => /noise street.* -> .*dBA/.test(line)),
      lines.join('\n'),
    );
    assert.ok(
      lines.some((line) => /door entry.* -> .*%/.test(line)),
      lines.join('\n'),
    );
  });

  it('leaves out the hints that are switched off', async () => {
    const { document } = await open('study.booth');
    const settings = vscode.workspace.getConfiguration('boothwright.inlayHints');
    const whole = new vscode.Range(0, 0, document.lineCount, 0);
    const verdicts = async () => {
      const hints = await vscode.commands.executeCommand<vscode.InlayHint[]>(
        'vscode.executeInlayHintProvider',
        document.uri,
        whole,
      );
      return hints.filter(({ position }) => document.lineAt(position.line).text.startsWith('require')).length;
    };
    await until(verdicts, (count) => count > 0);
    await settings.update('requirements', false, vscode.ConfigurationTarget.Workspace);
    await until(verdicts, (count) => count === 0);
    await settings.update('requirements', undefined, vscode.ConfigurationTarget.Workspace);
    await until(verdicts, (count) => count > 0);
  });

  it('leads from a material of the catalogue into the catalogue', async () => {
    const { document } = await open('study.booth');
    const place = placeAfter(document, '\n  gypsum-boa');
    const [target] = await definitions(document, place);
    assert.equal(target?.uri.scheme, 'booth-catalog');
    const catalogue = await vscode.workspace.openTextDocument(target!.uri);
    assert.equal(catalogue.languageId, 'booth');
    assert.equal(catalogue.getText(target?.range), 'gypsum-board');
  });

  it('leads from a name into the file that declares it', async () => {
    const { document } = await open('study.booth');
    const [target] = await definitions(document, placeAfter(document, 'fill own-ba'));
    assert.match(target?.uri.path ?? '', /own-materials\.booth$/);
  });

  it('opens the catalogue by its command', async () => {
    await vscode.commands.executeCommand('boothwright.showCatalogue');
    const active = await until(
      () => vscode.window.activeTextEditor,
      (editor) => editor?.document.uri.scheme === 'booth-catalog',
    );
    assert.match(active?.document.getText() ?? '', /\nmaterial gypsum-board/);
  });

  it('renames a name everywhere it is used', async () => {
    const { document } = await open('study.booth');
    const edit = await vscode.commands.executeCommand<vscode.WorkspaceEdit>(
      'vscode.executeDocumentRenameProvider',
      document.uri,
      placeAfter(document, 'assembly side', -1),
      'outer-wall',
    );
    const edits = edit.get(document.uri);
    assert.ok(edits.length >= 2, `${edits.length} places`);
    assert.ok(edits.every(({ newText, range }) => newText === 'outer-wall' && document.getText(range) === 'side'));
  });

  it('formats without changing anything but blanks', async () => {
    const { document } = await open('untidy.booth');
    const before = document.getText();
    const edits = await vscode.commands.executeCommand<vscode.TextEdit[]>(
      'vscode.executeFormatDocumentProvider',
      document.uri,
      { tabSize: 2, insertSpaces: true },
    );
    assert.ok(edits.length > 0);
    const edit = new vscode.WorkspaceEdit();
    edit.set(document.uri, edits);
    await vscode.workspace.applyEdit(edit);
    const after = document.getText();
    assert.notEqual(after, before);
    assert.equal(after.replace(/\s+/g, ''), before.replace(/\s+/g, ''));
    await vscode.commands.executeCommand('undo');
  });

  it('has an outline of assemblies, booths and what is in them', async () => {
    const { document } = await open('study.booth');
    const outline = await vscode.commands.executeCommand<vscode.DocumentSymbol[]>(
      'vscode.executeDocumentSymbolProvider',
      document.uri,
    );
    const names = outline.map(({ name }) => name);
    assert.ok(names.includes('side') && names.includes('study'), names.join(', '));
    const booth = outline.find(({ name }) => name === 'study');
    assert.ok(booth?.children.some(({ name }) => name === 'entry'));
  });

  it('folds blocks', async () => {
    const { document } = await open('study.booth');
    const folds = await vscode.commands.executeCommand<vscode.FoldingRange[]>(
      'vscode.executeFoldingRangeProvider',
      document.uri,
    );
    const line = placeAfter(document, 'booth study').line;
    assert.ok(folds.some(({ start, end }) => start === line && end > line + 3));
  });

  it('answers again after the language server was restarted', async () => {
    const { document } = await open('study.booth');
    await vscode.commands.executeCommand('boothwright.restartServer');
    const text = await until(
      () => hoverText(document, placeAfter(document, 'assembly side', -1)),
      (hover) => hover.includes('STC'),
    );
    assert.match(text, /STC \d+/);
  });
});

async function hoverText(document: vscode.TextDocument, place: vscode.Position): Promise<string> {
  const hovers = await vscode.commands.executeCommand<vscode.Hover[]>(
    'vscode.executeHoverProvider',
    document.uri,
    place,
  );
  return hovers
    .flatMap(({ contents }) => contents)
    .map((content) => (typeof content === 'string' ? content : content.value))
    .join('\n');
}

async function completionLabels(document: vscode.TextDocument, place: vscode.Position): Promise<string[]> {
  const list = await vscode.commands.executeCommand<vscode.CompletionList>(
    'vscode.executeCompletionItemProvider',
    document.uri,
    place,
  );
  return list.items.map(({ label }) => (typeof label === 'string' ? label : label.label));
}

async function definitions(document: vscode.TextDocument, place: vscode.Position): Promise<vscode.Location[]> {
  const found = await vscode.commands.executeCommand<(vscode.Location | vscode.LocationLink)[]>(
    'vscode.executeDefinitionProvider',
    document.uri,
    place,
  );
  return found.map((each) =>
    'targetUri' in each ? new vscode.Location(each.targetUri, each.targetSelectionRange ?? each.targetRange) : each,
  );
}
