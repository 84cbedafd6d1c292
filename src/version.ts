/** The version of the library that every assessment carries; held equal to the package's by a test. */
export const version = '0.1.0';
