export const patternsHelp = `Writes every layer of batting of a fitting, the panels of a fitted cover and, once the arm is measured, a soft arm at their true
size into a folder.

  npm run --silent patterns -- FILE FOLDER                write them into a new or an empty folder
  npm run --silent patterns -- FILE FOLDER --stretch 12   cover and arm of a knit that is pulled by 12 percent
                                                          (5 to 15; 10 if left out; 0 is woven fabric)
  npm run --silent patterns -- --help                     print this

Written are patterns.json (every part with its outline, edges and level lines, in millimeters, y upwards), a drawing (.svg)
and an exchange drawing (.dxf, release 12) of each part and of all parts, tiles-letter.pdf and tiles-a4.pdf to print at
100 %, sheet.pdf for a roll of 36 inches, and sheet-a0.pdf for a roll as wide as A0 (841 mm). A folder that this command
wrote is written anew; one that holds other files is left alone.
Where the work says that there is no cover, its panels are left out unless --stretch asks for them.
An arm whose measurements contradict one another is left out, and standard error says which.
Exit code: 0 when all was written, 2 when the file could not be planned or the folder holds other files; then standard error
says why, one sentence a problem; 1 when the folder could not be written.
`;
