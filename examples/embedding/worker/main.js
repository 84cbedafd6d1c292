// Who asks: the same lines in a page, in a bundle and in Deno. Documents are plain JSON, so they cross to a worker as
// they are.

/** The verdict of a take-off for each temperature, worked out in a worker. */
export function verdictsByTemperature(request, temperatures) {
  const worker = new Worker(new URL('./worker.js', import.meta.url), { type: 'module' });
  return new Promise((resolve, reject) => {
    worker.onmessage = ({ data }) => (data.faults ? reject(data.faults) : resolve(data.verdicts));
    worker.onerror = reject;
    worker.postMessage({ request, temperatures });
  }).finally(() => worker.terminate());
}
