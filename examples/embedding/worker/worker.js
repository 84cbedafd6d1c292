// The worker: prepares a take-off once, then answers for as many temperatures as it is asked, off the page's thread.

import { prepareTakeoff } from 'groundroll';

self.onmessage = ({ data: { request, temperatures } }) => {
  const prepared = prepareTakeoff(request);
  if (!prepared.ok) {
    self.postMessage({ faults: prepared.faults });
    return;
  }
  const verdicts = temperatures.map((value) => {
    const weather = { ...request.weather, temperature: { value, unit: 'degC' } };
    const assessed = prepared.value.assess(weather);
    return { temperature: value, verdict: assessed.ok ? assessed.value.verdict : 'undetermined' };
  });
  self.postMessage({ verdicts });
};
