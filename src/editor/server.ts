/** The language server: speaks the Language Server Protocol 3.17 over standard input and output. */
import {
  type AbstractMessageBuffer,
  createConnection,
  ProposedFeatures,
  StreamMessageReader,
  StreamMessageWriter,
} from 'vscode-languageserver/node';
import {serveOn} from './serving.js';

/** Serves one client; the process ends when the client says so, goes away, or sends what is no message. */
export function serve(input: NodeJS.ReadableStream, output: NodeJS.WritableStream, version: string): void {
  const reader = new StreamMessageReader(input);
  refuseNegative(reader);
  reader.onError(({message}) => {
    // Where a message ends is not known any longer; a message that is no JSON is only that.
    if (!/Content-Length|header/i.test(message)) return;
    process.stderr.write(
      `wmark: what came is no message of the protocol (${message}); start the server again\n`,
    );
    process.exit(1);
  });
  const connection = createConnection(ProposedFeatures.all, reader, new StreamMessageWriter(output));
  let isOver = false;
  connection.onShutdown(() => {
    isOver = true;
  });
  for (const gone of ['end', 'close']) input.on(gone, () => process.exit(isOver ? 0 : 1));
  serveOn(connection, {version, cwd: process.cwd()});
}

/** The library takes a length below nothing and then waits for bytes that never come. */
function refuseNegative(reader: StreamMessageReader): void {
  const buffer: AbstractMessageBuffer = Reflect.get(reader, 'buffer');
  const read = buffer.tryReadBody.bind(buffer);
  buffer.tryReadBody = (length) => {
    if (length < 0) throw new Error(`Content-Length is below nothing: ${length}`);
    return read(length);
  };
}
