import fc from 'fast-check';

// The same random cases in every run: a failure can be repeated, and a mutation tool sees stable test titles.
fc.configureGlobal({ seed: 20260714, numRuns: 300 });
