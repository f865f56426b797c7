import { createAssessor } from '@boothwright/assessment';
import { BrowserMessageReader, BrowserMessageWriter, createConnection } from 'vscode-languageserver/browser.js';
import { receiveFiles } from '../common/sent-files.js';
import { startServer } from '../common/server.js';

// In a worker the port to the editor is the global scope itself.
declare const self: ConstructorParameters<typeof BrowserMessageReader>[0];

// It remembers parts of results, so that a keystroke costs only what depends on it.
const assessor = createAssessor();

const connection = createConnection(new BrowserMessageReader(self), new BrowserMessageWriter(self));

startServer(connection, {
  // A worker reads no files itself; what the editor has open or sends is all there is.
  ...receiveFiles(connection),
  assess: async (spec) => assessor.assess(spec),
  later(task) {
    const handle = setTimeout(task, 0);
    return () => clearTimeout(handle);
  },
});
