import path from 'node:path';
import { createConnection, ProposedFeatures } from 'vscode-languageserver/node.js';
import { receiveFiles } from '../common/sent-files.js';
import { startServer } from '../common/server.js';
import { assessInThread } from './assess-in-thread.js';
import { committedText, lastCommit } from './committed.js';
import { listBelow } from './list-below.js';
import { readBelow } from './read-below.js';

// The bundle is a CommonJS script, and what its thread runs lies beside it.
declare const __dirname: string;

// Without a word on the command line about how to talk, the server talks over its standard streams.
const transports = ['--stdio', '--node-ipc', '--socket', '--pipe'];
const told = process.argv.some((word) => transports.some((transport) => word.startsWith(transport)));
const connection = told
  ? createConnection(ProposedFeatures.all)
  : createConnection(ProposedFeatures.all, process.stdin, process.stdout);

const sent = receiveFiles(connection);
startServer(connection, {
  // A folder that is not on disk, as in a virtual workspace, is read by the editor.
  read: (folder, path) => (folder.startsWith('file:') ? readBelow : sent.read)(folder, path),
  list: (folder) => (folder.startsWith('file:') ? listBelow : sent.list)(folder),
  assess: assessInThread(path.join(__dirname, 'assess-thread.cjs')),
  lastCommit,
  committed: committedText,
  later(task) {
    const handle = setImmediate(task);
    return () => clearImmediate(handle);
  },
});
