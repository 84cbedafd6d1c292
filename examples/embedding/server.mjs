// The handler under node:http.
//   node server.mjs 8080

import { createServer } from 'node:http';
import { Readable } from 'node:stream';
import { handle } from './handler.mjs';

async function respond(incoming, outgoing) {
  const body = incoming.method === 'POST' ? Readable.toWeb(incoming) : undefined;
  const request = new Request('http://localhost', { method: incoming.method, body, duplex: 'half' });
  const response = await handle(request);
  outgoing.writeHead(response.status, { 'content-type': 'application/json', connection: 'close' });
  outgoing.end(await response.text());
}

// A method that no Request can have, or a connection that breaks off, ends its own exchange and not the server.
const server = createServer((incoming, outgoing) => {
  respond(incoming, outgoing).catch(() => outgoing.writeHead(400, { connection: 'close' }).end());
});

server.listen(Number(process.argv[2] ?? 0), 'localhost', () => {
  console.log(`http://localhost:${server.address().port}`);
});
