import { createConnection, ProposedFeatures } from 'vscode-languageserver/node.js';
import { startServer } from '../common/server.js';
import { readBelow } from './read-below.js';

// Without a word on the command line about how to talk, the server talks over its standard streams.
const transports = ['--stdio', '--node-ipc', '--socket', '--pipe'];
const told = process.argv.some((word) => transports.some((transport) => word.startsWith(transport)));
const connection = told
  ? createConnection(ProposedFeatures.all)
  : createConnection(ProposedFeatures.all, process.stdin, process.stdout);

startServer(connection, {
  read: readBelow,
  later(task) {
    const handle = setImmediate(task);
    return () => clearImmediate(handle);
  },
});
