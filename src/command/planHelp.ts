export const planHelp = `Reads fitting files and prints the plan: which pieces of batting to pin on a dress form, and in which order.

  npm run --silent plan -- FILE         print the plan of one fitting
  npm run --silent plan -- FILE FILE    print the plans of several, as one JSON list
  npm run --silent plan -- -            read the fitting from standard input
  npm run --silent plan -- --help       print this

The fitting file is JSON (public/fitting.schema.json), and so is the plan (public/plan.schema.json):

  { "version": 1, "unit": "in",
    "body": { "bustGirth": "34 1/2", "waistGirth": 29, "fullHipGirth": "37 3/4", "waistFrontArc": "15 3/4 in" },
    "form": { "table": "misses", "size": "8" },
    "batting": { "name": "bonded polyester", "layerThickness": "6 mm" } }

Without "size" the tool chooses the size. What is measured on the form itself, typed beside the size chart, always wins.
A plan is a draft ("basis") until the bare form was measured on the person's lines: with "readAtBodyLines": true in
"form" its measurements are taken as such, as are those of the bare form in "work". "mayMissMm" is what it may miss by.
Exit code: 0 when every plan was printed, 2 when a file could not be planned; then standard error says why,
one sentence a problem, and nothing is printed; 1 when the plans could not be written.
`;
