/** Whether a mutation run has instrumented the code, which is then too slow to be timed or to be asked a million times. */
export const isInstrumented = process.env['GROUNDROLL_FOLDER'] !== undefined;
