// An HTTP handler for any server that speaks Request and Response: an untrusted body in, an assessment or all faults out.

import { assessLanding, assessTakeoff } from 'groundroll';

const assessmentOf = new Map([
  ['groundroll/takeoff-request/1', assessTakeoff],
  ['groundroll/landing-request/1', assessLanding],
]);
const longest_bytes = 256 * 1024;
const refuse = (status, path, message) => Response.json({ faults: [{ path, message }] }, { status });

/** POST a request document: 200 with the assessment, 422 with every fault and its path. */
export async function handle(request) {
  if (request.method !== 'POST') return refuse(405, '', 'only POST is answered');
  const text = await textWithin(longest_bytes, request.body ?? []);
  if (text === undefined) return refuse(413, '', `is longer than ${longest_bytes} bytes`);
  let document;
  try {
    document = JSON.parse(text);
  } catch {
    return refuse(400, '', 'is not JSON');
  }
  const assess = assessmentOf.get(document?.schema);
  if (assess === undefined) return refuse(422, 'schema', 'is not that of a request');
  // Never throws for what a body may hold: what is unknown, missing or out of bounds is a fault.
  const assessed = assess(document);
  return assessed.ok ? Response.json(assessed.value) : Response.json({ faults: assessed.faults }, { status: 422 });
}

/** The text of a body, or undefined as soon as it is longer than that. */
async function textWithin(bytes, body) {
  const chunks = [];
  for await (const chunk of body) {
    chunks.push(chunk);
    bytes -= chunk.length;
    if (bytes < 0) return undefined;
  }
  return new Blob(chunks).text();
}
