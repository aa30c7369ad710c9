export const nextHelp = `Reads fitting files with the work done so far and prints the one next step of the padding.

  npm run --silent next -- FILE         print the next step of one fitting
  npm run --silent next -- FILE FILE    print those of several, as one JSON list
  npm run --silent next -- -            read the fitting from standard input
  npm run --silent next -- --help       print this

What is printed is JSON (public/next.schema.json). Once the step is done, add "record" to the fitting's "work": where it
holds null, put what the tape reads, as a number in the fitting's unit. What was not read is left out. Where pins were
taken out and counted ("basted", "made"), "pins" may be added with their number; another "coverChosen" later chooses another cover, also after there was none.
Exit code: 0 when every step was printed, 2 when a file could not be planned; then standard error says why,
one sentence a problem, and nothing is printed; 1 when the steps could not be written.
`;
